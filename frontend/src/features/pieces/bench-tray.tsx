/** The hand of the bench: what can be said of the chosen line. */
import { useState } from "preact/hooks";
import { upperFirst } from "../../domain/format";
import { Act, MainAct, PictureAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { FaultDrawing } from "../../ui/marks";
import type { JoinLine, MouldLine, PieceLine } from "./bench-overlay";
import css from "./bench-tray.module.css";
import { FAULTS } from "./bench-words";
import type { Fault } from "./bench-words";
import type { Bench } from "./use-bench";

// The keys of FAULTS are its own type.
const FAULT_NAMES = Object.keys(FAULTS) as Fault[];

export function BenchTray({ bench }: { bench: Bench }) {
  const { chosen } = bench;
  const [stuckKey, setStuckKey] = useState<string | null>(null);
  if (chosen === null) return null;
  const close = (): void => { setStuckKey(null); };
  switch (chosen.kind) {
    case "piece":
      if (chosen.row.part === null) return <CoverTray line={chosen} bench={bench} />;
      return stuckKey === chosen.key
        ? <FaultTray line={chosen} bench={bench} close={close} />
        : <PieceTray line={chosen} bench={bench} openFaults={() => { setStuckKey(chosen.key); }} />;
    case "join":
      return <JoinTray line={chosen} bench={bench} />;
    case "mould":
      return <MouldTray line={chosen} isDead={bench.isDead} />;
  }
}

function PieceTray({ line, bench, openFaults }: { line: PieceLine; bench: Bench; openFaults: () => void }) {
  const { piece, maker, mine, reason } = line.row;
  const whose = !mine && maker ? `${maker.first_name}’s · ` : "";
  return (
    <Tray mark={piece.mark} markHref={`/pieces/${piece.id}`} reason={`${whose}${reason}`} isDead={bench.isDead}>
      <MainAct spoken={`${piece.mark} out`} wide={`${piece.mark} out`} onPress={() => { bench.answer("demoulded"); }}>Out</MainAct>
      <Act spoken={`${piece.mark} not yet`} onPress={() => { bench.answer("not_yet"); }}>Not yet</Act>
      <Act spoken={`${piece.mark} stuck`} onPress={openFaults}>Stuck…</Act>
    </Tray>
  );
}

function CoverTray({ line, bench }: { line: PieceLine; bench: Bench }) {
  const { piece, maker, mine, cover_next, reason } = line.row;
  const whose = !mine && maker ? `${maker.first_name}’s · ` : "";
  const words = cover_next?.words ?? "";
  return (
    <Tray mark={piece.mark} markHref={`/pieces/${piece.id}`} reason={`${whose}${reason}`} isDead={bench.isDead}>
      <MainAct spoken={`${piece.mark}: ${words}`} onPress={bench.cover}>{upperFirst(words)}</MainAct>
      <Act href={`/pieces/${piece.id}`}>Open {piece.mark}</Act>
    </Tray>
  );
}

function FaultTray({ line, bench, close }: { line: PieceLine; bench: Bench; close: () => void }) {
  const { mark } = line.row.piece;
  return (
    <Tray mark={mark} reason="what holds it?" isFree isDead={bench.isDead}>
      <div class={css.faults}>
        {FAULT_NAMES.map((fault) => (
          <PictureAct key={fault} spoken={`${mark} stuck: ${FAULTS[fault]}`} onPress={() => { close(); bench.answer("stuck", fault); }}>
            <FaultDrawing name={fault} />
            {FAULTS[fault]}
          </PictureAct>
        ))}
        <Act onPress={close}>Not stuck</Act>
      </div>
    </Tray>
  );
}

function JoinTray({ line, bench }: { line: JoinLine; bench: Bench }) {
  const { piece, reason, verdict, cover_next } = line.row;
  const open = <Act href={`/pieces/${piece.id}`}>Open {piece.mark}</Act>;
  return (
    <Tray mark={piece.mark} reason={reason} isDead={bench.isDead}>
      {verdict === "wait" && cover_next && <MainAct spoken={`${piece.mark}: ${cover_next.words}`} onPress={bench.cover}>{upperFirst(cover_next.words)}</MainAct>}
      {verdict === "wait" ? <Act spoken={`${piece.mark} joined`} onPress={bench.join}>Joined</Act> : <MainAct spoken={`${piece.mark} joined`} onPress={bench.join}>Joined</MainAct>}
      {open}
    </Tray>
  );
}

function MouldTray({ line, isDead }: { line: MouldLine; isDead: boolean }) {
  const { set, reason, may_press } = line.row;
  return (
    <Tray mark={set.label} reason={reason} isDead={isDead}>
      {may_press ? <MainAct href={`/press/${set.id}`}>Press {set.label}</MainAct> : <Act href={`/moulds/${set.id}`}>Open {set.label}</Act>}
    </Tray>
  );
}

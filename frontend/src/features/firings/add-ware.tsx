/** Ware that is ready for this load, in the order of the studio's rule: a tap takes a piece in, and the fit is told with it. */
import { useState } from "preact/hooks";
import type { CouldGoRow } from "../../api/shapes-firings";
import { count, joinFacts } from "../../domain/format";
import { REASON_MOST, THING_MOST } from "../../domain/limits";
import { Act, Count, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { isTooLong } from "../../ui/room-left";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import css from "./kilns.module.css";
import type { Shown } from "./load";
import { queueRowWords, shortly } from "./queue-words";
import { NO_SHEET, useCouldGo, useFit } from "./use-load";

/** What a reason of one who may override can lift. */
const LIFTED = new Set(["damp-evidence-missing", "too-full"]);

const needsReason = (row: CouldGoRow): boolean => row.refused !== null || row.fits === "does_not_fit";

export function mayTick(row: CouldGoRow, mayOverride: boolean): boolean {
  if (row.refused !== null && !(mayOverride && LIFTED.has(row.refused.code))) return false;
  return row.fits !== "does_not_fit" || mayOverride;
}

export function AddWare({ it, around }: Shown) {
  const { load } = it;
  const answer = useCouldGo(load.id);
  const [ticked, tick] = useState<ReadonlySet<string>>(new Set());
  const [reason, type] = useState("");
  const [isThing, setThing] = useState(false);
  const fit = useFit(load.id, [...ticked]);
  const inside = new Set(load.placements.map(({ piece }) => piece?.id));
  const rows = answer?.rows.filter((row) => !inside.has(row.piece.id)) ?? [];
  const chosen = rows.filter((row) => ticked.has(row.piece.id));
  const wantsReason = chosen.some(needsReason);
  const toggle = (id: string): void => {
    const next = new Set(ticked);
    if (!next.delete(id)) next.add(id);
    tick(next);
  };
  const send = (): void => { it.putOn(chosen.map(({ piece }) => ({ id: piece.id, mark: piece.mark })), wantsReason ? reason.trim() : ""); };
  const ready = rows.filter((row) => !needsReason(row));
  const rowOf = (row: CouldGoRow) => <Ready key={row.piece.id} row={row} isTicked={ticked.has(row.piece.id)} mayTick={mayTick(row, load.may.override)} toggle={toggle} around={around} />;
  if (isThing) return <Thing it={it} back={() => { setThing(false); }} />;
  const tray = (
    <Tray isDead={it.saying.isDead} reason={chosen.length > 0 ? fit?.sentence : undefined}>
      <MainAct isDisabled={chosen.length === 0 || (wantsReason && (reason.trim() === "" || isTooLong(reason, REASON_MOST)))} onPress={send}>{chosen.length === 0 ? "Tap what goes" : `Put ${String(chosen.length)} on`}</MainAct>
      <Act onPress={() => { it.open(NO_SHEET); }}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={load.number} when="add ware" within="/kilns" tray={tray}>
      {answer === null && <Fact label="" natch="next" value="Asking" note="Which ware may go is known once the studio is heard." />}
      {answer !== null && <Fact label="the rule" note={answer.rule} />}
      {wantsReason && (
        <Fact label="all the same" note="Water left in the wall turns to steam and bursts the pot and those beside it. Everybody can read why it goes.">
          <Field label="Why it goes all the same" name="override_reason" most={REASON_MOST} value={reason} onType={type} />
        </Fact>
      )}
      {answer !== null && (
        <Block name="Ready" count={ready.length} note={chosen.length > 0 ? `${String(chosen.length)} chosen` : undefined}>
          {ready.map(rowOf)}
          {ready.length === 0 && <li><Fact label="" natch="done" value="Nothing that is ready waits for this." note={`For a ${load.kind} firing, cone ${load.cone}.`} /></li>}
        </Block>
      )}
      {rows.length > ready.length && <Block name="Not yet" count={rows.length - ready.length}>{rows.filter(needsReason).map(rowOf)}</Block>}
      <div class={css.more}><Act onPress={() => { setThing(true); }}>Something that is no piece…</Act></div>
    </Screen>
  );
}

function Ready({ row, isTicked, mayTick: may, toggle, around }: { row: CouldGoRow; isTicked: boolean; mayTick: boolean; toggle: (id: string) => void; around: Shown["around"] }) {
  const { verdict, evidence, spoken } = queueRowWords(row, around.now, around.zone);
  const against = (row.refused && shortly(row.refused.detail, row.piece.mark)) ?? (row.fits === "does_not_fit" ? "finds no room on it" : row.fits === "doubtful" ? "doubtful whether it finds room" : null);
  const said = against === null ? evidence : joinFacts(against, evidence.split(" · ")[0]);
  const words = { mark: row.piece.mark, noun: row.piece.noun, verdict, evidence: said };
  if (!may) return <Row {...words} natch="guess" spoken={`${spoken} Not now: ${against ?? ""}`} href={`/pieces/${row.piece.id}`} />;
  return <Row {...words} natch={isTicked ? "today" : against === null ? "next" : "guess"} isChosen={isTicked} spoken={`${isTicked ? "Chosen: " : "Not chosen: "}${spoken}${against ? ` ${against}.` : ""}`} onChoose={() => { toggle(row.piece.id); }} />;
}

/** Test bars, somebody's shelves: what and how many, no piece of the studio's. */
function Thing({ it, back }: { it: Shown["it"]; back: () => void }) {
  const [what, type] = useState("");
  const [figure, setFigure] = useState(1);
  const tray = (
    <Tray isDead={it.saying.isDead}>
      <MainAct isDisabled={what.trim() === "" || isTooLong(what, THING_MOST)} onPress={() => { it.putThings(what.trim(), figure); }}>{`Put ${count(figure, "of it", "of it")} on`}</MainAct>
      <Act onPress={back}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={it.load.number} when="no piece" within="/kilns" isSeam={false} tray={tray}>
      <p>Test bars, a shelf of somebody’s: it takes room and is on the list, but it is no piece.</p>
      <Field label="What" name="what" most={THING_MOST} value={what} onType={type} />
      <Count label="How many" figure={figure} least={1} onCount={setFigure} />
    </Screen>
  );
}

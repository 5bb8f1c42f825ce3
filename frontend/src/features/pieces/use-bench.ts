import { useEffect, useRef, useState } from "preact/hooks";
import type { BenchAnswer } from "../../api/shapes";
import type { JsonObject } from "../../offline/kept-act";
import { uuid7 } from "../../offline/ids";
import { useAct, useKeptActs, useUndo } from "../common/use-outbox";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import { chosenOf, nextKey, placeOf } from "./bench-choice";
import { overlay, withRecents } from "./bench-overlay";
import type { BenchView, JoinLine, Line, PieceLine, Recent, Said } from "./bench-overlay";
import { coverStep } from "./piece-acts";
import { FAULTS, SAID_WORDS } from "./bench-words";
import type { Fault } from "./bench-words";
import { useDeadTime, useRecents } from "./use-answered";

export interface Bench {
  view: BenchView;
  chosen: Line | null;
  isDead: boolean;
  /** Lines whose answer can still be undone with one tap. */
  recentKeys: ReadonlySet<string>;
  /** The newest answer, for who listens. */
  lastSaid: Line | null;
  choose: (line: Line) => void;
  answer: (verb: "demoulded" | "not_yet" | "stuck", fault?: Fault) => void;
  join: () => void;
  /** Do what is advised of the cover next, to the part it names. */
  cover: () => void;
  undo: (said: Said) => void;
}

interface Answering {
  path: string;
  fields: JsonObject;
  verb: Said["verb"];
  about: Record<string, string>;
  words: string;
}

export function useBenchScreen(): Screen<BenchAnswer> & { again: () => void } {
  return useScreen<BenchAnswer>("bench/");
}

/** What can be done at a bench that has been heard of. */
export function useBench(snapshot: BenchAnswer): Bench {
  const acts = useKeptActs();
  const act = useAct();
  const undoAct = useUndo();
  const { recents, add, stored, drop } = useRecents();
  const { isDead, isDeadNow, die } = useDeadTime();
  const view = withRecents(overlay(snapshot, acts), recents, acts);
  const { chosen, choose } = useChosen(view, die);

  const say = (line: PieceLine | JoinLine, what: Answering): void => {
    const at = placeOf(view, line.key);
    if (!at || isDeadNow()) return;
    die();
    choose(nextKey(view, line.key));
    const id = uuid7();
    const said = { actId: id, verb: what.verb, at: new Date(), how: what.about["how"] ?? null, isKept: true, isStored: false };
    if (line.kind === "join") add({ block: "joinToday", line, place: at.place, said });
    else if (at.block !== "joinToday") add({ block: at.block, line, place: at.place, said });
    // The line under the title says that the phone could not keep it; the row goes back to what it was.
    act({ ...what, id, basedOn: snapshot.journal_seq }).then(stored, () => { drop(id); });
  };

  const answer: Bench["answer"] = (verb, fault) => {
    if (chosen?.kind !== "piece" || !chosen.row.part) return;
    const { part, piece } = chosen.row;
    say(chosen, {
      path: `parts/${part.id}/events/`,
      fields: { kind: verb, ...(fault ? { stuck_how: fault } : {}) },
      verb,
      about: { part_id: part.id, piece_id: piece.id, ...(fault ? { how: fault } : {}) },
      words: `${piece.mark}, ${part.role}: ${(fault ? FAULTS[fault] : SAID_WORDS[verb]).toLowerCase()}`,
    });
  };

  const join = (): void => {
    if (chosen?.kind !== "join") return;
    const { piece } = chosen.row;
    say(chosen, {
      path: `pieces/${piece.id}/stage-events/`,
      fields: { stage: "assembly", state: "joined" },
      verb: "joined",
      about: { piece_id: piece.id },
      words: `${piece.mark}: joined`,
    });
  };

  const cover = (): void => {
    if (chosen === null || chosen.kind === "mould" || !chosen.row.cover_next) return;
    const { piece, cover_next } = chosen.row;
    const { path, fields, about, said } = coverStep(piece.id, cover_next);
    say(chosen, { path, fields, verb: "covered", about, words: `${piece.mark}: ${said}` });
  };

  const undo = (said: Said): void => {
    const line = recents.find((recent) => recent.said.actId === said.actId)?.line;
    drop(said.actId);
    if (line) choose(line.key);
    die();
    void undoAct(said.actId, `${line?.row.piece.mark ?? ""}: undo of ${SAID_WORDS[said.verb].toLowerCase()}`, snapshot.journal_seq);
  };

  return {
    view, chosen, isDead, answer, join, cover, undo,
    choose: (line) => { choose(line.key); },
    recentKeys: new Set(recents.map((recent) => recent.line.key)),
    lastSaid: lastSaidOf(recents),
  };
}

function lastSaidOf(recents: readonly Recent[]): Line | null {
  const last = recents.at(-1);
  return last ? { ...last.line, said: last.said } : null;
}

/**
 * The chosen line stays chosen when rows come and go above it. If it is gone without the holder's doing (somebody else took
 * the piece out), the hand must not land on the next one: the tray is dead for the same moment.
 */
function useChosen(view: BenchView, die: () => void): { chosen: Line | null; choose: (key: string | null) => void } {
  const [key, setKey] = useState<string | null>(null);
  const wanted = useRef<string | null>(null);
  const dieNow = useRef(die);
  dieNow.current = die;
  const chosen = chosenOf(view, key);
  const shownKey = chosen?.key ?? null;
  useEffect(() => {
    if (shownKey === null) return;
    if (wanted.current !== null && wanted.current !== shownKey) dieNow.current();
    wanted.current = shownKey;
    setKey(shownKey);
  }, [shownKey]);
  const choose = (next: string | null): void => {
    wanted.current = next;
    setKey(next);
  };
  return { chosen, choose };
}

import { useEffect, useRef, useState } from "preact/hooks";
import type { BenchAnswer } from "../../api/shapes";
import { useSession } from "../common/session";
import { useKeptActs, useAct, useUndo } from "../common/use-outbox";
import { useScreen } from "../common/use-screen";
import type { Failure } from "../common/use-screen";
import { overlay, UNDO_MS, withRecents } from "./bench-overlay";
import type { BenchView, JoinLine, Line, PieceLine, Recent, Said } from "./bench-overlay";
import { FAULTS } from "./bench-words";
import type { Fault } from "./bench-words";

/** So long after an answer the tray takes nothing: a knuckle that bounces cannot answer twice. */
export const DEAD_MS = 600;

export interface ReadyBench {
  snapshot: BenchAnswer;
  view: BenchView;
  chosen: Line | null;
  heardAt: Date | null;
  isDead: boolean;
  recentKeys: ReadonlySet<string>;
  choose: (line: Line) => void;
  answer: (verb: "demoulded" | "not_yet" | "stuck", fault?: Fault) => void;
  join: () => void;
  undo: (said: Said) => void;
}

export type Bench =
  | { state: "loading"; isSlow: boolean }
  | { state: "failed"; failure: Failure; again: () => void }
  | { state: "ready"; bench: ReadyBench };

/** Lines one may choose: what has been said already waits for nothing. */
export function choosable(view: BenchView): Line[] {
  const lines: Line[] = [...view.lookNow, ...view.joinToday, ...view.pressNext, ...view.laterToday, ...view.later];
  return lines.filter((line) => line.said === null);
}

/** The line under the hand: the one tapped while it is there, else the first that wants one. */
export function chosenOf(view: BenchView, key: string | null): Line | null {
  const lines = choosable(view);
  return lines.find((line) => line.key === key) ?? lines.find((line) => line.kind !== "join" || line.row.verdict === "now") ?? null;
}

/** The next line of the same block, so that the hand goes down the list; at its end, the first that is left. */
export function nextKey(view: BenchView, line: PieceLine | JoinLine): string | null {
  const block: readonly Line[] = line.kind === "join" ? view.joinToday : [view.lookNow, view.laterToday, view.later].find((lines) => lines.some((one) => one.key === line.key)) ?? [];
  const place = block.findIndex((one) => one.key === line.key);
  const open = (lines: readonly Line[]): Line | undefined => lines.find((one) => one.said === null && one.key !== line.key);
  return (open(block.slice(place + 1)) ?? open(block))?.key ?? null;
}

const WORDS = { demoulded: "out of its mould", not_yet: "not yet", stuck: "stuck" } as const;

export function useBench(): Bench {
  const screen = useScreen<BenchAnswer>("bench/");
  const { membership } = useSession();
  const acts = useKeptActs();
  const act = useAct();
  const undoAct = useUndo();
  const [key, setKey] = useState<string | null>(null);
  const { recents, add, drop } = useRecents();
  const { isDead, isDeadNow, die } = useDeadTime();

  if (screen.state !== "ready") return screen;
  const snapshot = screen.value;
  const waiting = new Set(acts.filter((one) => one.state === "waiting").map((one) => one.id));
  const view = withRecents(overlay(snapshot, acts), recents, waiting);
  const chosen = chosenOf(view, key);

  const said = async (line: PieceLine | JoinLine, verb: Said["verb"], keep: () => Promise<string>, how: string | null): Promise<void> => {
    const block: readonly Line[] = line.kind === "join" ? view.joinToday : view.lookNow;
    const place = Math.max(0, block.findIndex((one) => one.key === line.key));
    setKey(nextKey(view, line));
    const actId = await keep();
    add({ line, place, said: { actId, verb, at: new Date(), how, isKept: true } });
  };

  const answer: ReadyBench["answer"] = (verb, fault) => {
    if (isDeadNow() || chosen?.kind !== "piece" || !chosen.row.part) return;
    const { part, piece } = chosen.row;
    die();
    const keep = (): Promise<string> => act({
      path: `parts/${part.id}/events/`,
      fields: { kind: verb, ...(fault ? { stuck_how: fault } : {}) },
      basedOn: snapshot.journal_seq,
      verb,
      about: { part_id: part.id, piece_id: piece.id, ...(fault ? { how: fault } : {}) },
      words: `${piece.mark}, ${part.role}: ${WORDS[verb]}${fault ? `, ${FAULTS[fault].toLowerCase()}` : ""}`,
    });
    void said(chosen, verb, keep, fault ?? null);
  };

  const join = (): void => {
    if (isDeadNow() || chosen?.kind !== "join") return;
    const { piece } = chosen.row;
    die();
    const keep = (): Promise<string> => act({
      path: `pieces/${piece.id}/stage-events/`,
      fields: { stage: "assembly", state: "joined" },
      basedOn: snapshot.journal_seq,
      verb: "joined",
      about: { piece_id: piece.id },
      words: `${piece.mark}: joined`,
    });
    void said(chosen, "joined", keep, null);
  };

  const undo = (what: Said): void => {
    drop(what.actId);
    setKey(recents.find((recent) => recent.said.actId === what.actId)?.line.key ?? null);
    void undoAct(what.actId, `Undo of ${what.verb.replace("_", " ")}, by ${membership.member.first_name}`, snapshot.journal_seq);
  };

  const choose = (line: Line): void => {
    setKey(line.key);
  };
  return {
    state: "ready",
    bench: {
      snapshot, view, chosen, isDead, choose, answer, join, undo,
      heardAt: screen.isFresh ? null : screen.heardAt,
      recentKeys: new Set(recents.map((recent) => recent.line.key)),
    },
  };
}

/** Lines answered in the last ten seconds. */
function useRecents(): { recents: readonly Recent[]; add: (recent: Recent) => void; drop: (actId: string) => void } {
  const [recents, setRecents] = useState<readonly Recent[]>([]);
  const drop = (actId: string): void => {
    setRecents((all) => all.filter((recent) => recent.said.actId !== actId));
  };
  const add = (recent: Recent): void => {
    setRecents((all) => [...all, recent]);
    setTimeout(() => { drop(recent.said.actId); }, UNDO_MS);
  };
  return { recents, add, drop };
}

/** A ref decides, so that two taps before the next drawing are still told apart; the state only draws. */
function useDeadTime(): { isDead: boolean; isDeadNow: () => boolean; die: () => void } {
  const until = useRef(0);
  const [isDead, setDead] = useState(false);
  useEffect(() => {
    if (!isDead) return undefined;
    const timer = setTimeout(() => { setDead(false); }, DEAD_MS);
    return () => { clearTimeout(timer); };
  }, [isDead]);
  return {
    isDead,
    isDeadNow: () => performance.now() < until.current,
    die: () => {
      until.current = performance.now() + DEAD_MS;
      setDead(true);
    },
  };
}

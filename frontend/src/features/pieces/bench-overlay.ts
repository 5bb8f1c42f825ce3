/** The bench as this phone knows it: what the studio last said, with what was done here since laid over it. */
import type { BenchAnswer, BenchRow, JoinRow, MouldRow } from "../../api/shapes";
import { unseenBy } from "../../offline/kept-act";
import type { KeptAct } from "../../offline/kept-act";
import { isDue } from "./covering-words";

/** What somebody said of a line on this phone, until the studio's own rows show it. */
export interface Said {
  actId: string;
  verb: "demoulded" | "not_yet" | "stuck" | "joined" | "pressed" | "covered";
  at: Date;
  how: string | null;
  /** True until the studio has heard it. */
  isKept: boolean;
}

/** Said with a tap a moment ago: drawn at once, while the phone is still writing it down. */
export interface Tapped extends Said {
  isStored: boolean;
}

interface Shared {
  key: string;
  said: Said | null;
}
export type PieceLine = Shared & { kind: "piece"; row: BenchRow };
export type JoinLine = Shared & { kind: "join"; row: JoinRow };
export type MouldLine = Shared & { kind: "mould"; row: MouldRow };
export type Line = PieceLine | JoinLine | MouldLine;

export interface BenchView {
  lookNow: PieceLine[];
  laterToday: PieceLine[];
  later: PieceLine[];
  /** Drying, with a change of the cover due. */
  coverNow: PieceLine[];
  joinToday: JoinLine[];
  pressNext: MouldLine[];
  drying: PieceLine[];
  readyForBisque: PieceLine[];
}

const PIECE_BLOCKS = ["lookNow", "laterToday", "later", "coverNow", "drying", "readyForBisque"] as const;

export const pieceLine = (row: BenchRow, said: Said | null = null): PieceLine => ({
  kind: "piece", key: row.part?.id ?? row.piece.id, row, said,
});

/** Whether the next change of its cover was due when the studio answered, or about to be. */
function dueAt(at: string): (row: BenchRow) => boolean {
  return ({ cover_next, clash_id }) => cover_next !== null && clash_id === null && isDue(cover_next, new Date(at));
}

export function viewOf(snapshot: BenchAnswer): BenchView {
  const lines = (rows: readonly BenchRow[]): PieceLine[] => rows.map((row) => pieceLine(row));
  const isToCover = dueAt(snapshot.at);
  return {
    lookNow: lines(snapshot.look_now),
    laterToday: lines(snapshot.later_today),
    later: lines(snapshot.later),
    joinToday: snapshot.join_today.map((row) => ({ kind: "join", key: row.piece.id, row, said: null })),
    pressNext: snapshot.press_next.map((row) => ({ kind: "mould", key: row.set.id, row, said: null })),
    coverNow: lines(snapshot.drying.filter(isToCover)),
    drying: lines(snapshot.drying.filter((row) => !isToCover(row))),
    readyForBisque: lines(snapshot.ready_for_bisque),
  };
}

function saidBy(act: KeptAct, verb: Said["verb"]): Said {
  return { actId: act.id, verb, at: new Date(act.made_at), how: act.about["how"] ?? null, isKept: act.state === "waiting" };
}

function find(view: BenchView, key: string | undefined): PieceLine | undefined {
  return PIECE_BLOCKS.flatMap((name) => view[name]).find((line) => line.key === key);
}

/** Take a line out of whichever block holds it and put it, with what was said, at the head of another. */
function moved(view: BenchView, line: PieceLine, to: (typeof PIECE_BLOCKS)[number], said: Said): BenchView {
  const without = Object.fromEntries(PIECE_BLOCKS.map((name) => [name, view[name].filter((other) => other.key !== line.key)]));
  const next: BenchView = { ...view, ...without };
  return { ...next, [to]: [{ ...line, said }, ...next[to]] };
}

function answered(view: BenchView, act: KeptAct, verb: "demoulded" | "not_yet" | "stuck"): BenchView {
  const line = find(view, act.about["part_id"]);
  if (!line) return view;
  return moved(view, line, verb === "demoulded" ? "drying" : "laterToday", saidBy(act, verb));
}

/** What is covered dries on; what comes next of it the studio says when it has reckoned. */
function covered(before: BenchView, act: KeptAct): BenchView {
  const joinToday = before.joinToday.map((line) => (line.key === act.about["piece_id"] ? { ...line, row: { ...line.row, cover_next: null } } : line));
  const view = { ...before, joinToday };
  const line = view.coverNow.find(({ row }) => row.piece.id === act.about["piece_id"]);
  if (!line) return view;
  return moved(view, { ...line, row: { ...line.row, cover_next: null } }, "drying", saidBy(act, "covered"));
}

function placed(view: BenchView, pieceId: string | undefined, place: { id: string; name: string }): BenchView {
  const put = (line: PieceLine): PieceLine => (line.row.piece.id === pieceId ? { ...line, row: { ...line.row, place } } : line);
  return { ...view, ...Object.fromEntries(PIECE_BLOCKS.map((name) => [name, view[name].map(put)])) };
}

function without(view: BenchView, pieceId: string | undefined): BenchView {
  const isLeft = (line: PieceLine | JoinLine): boolean => line.row.piece.id !== pieceId;
  return {
    ...view,
    ...Object.fromEntries(PIECE_BLOCKS.map((name) => [name, view[name].filter(isLeft)])),
    joinToday: view.joinToday.filter(isLeft),
  };
}

function after(view: BenchView, act: KeptAct): BenchView {
  const { about } = act;
  switch (act.verb) {
    case "demoulded":
    case "not_yet":
    case "stuck":
      return answered(view, act, act.verb);
    case "covered":
      return covered(view, act);
    case "joined":
      return { ...view, joinToday: view.joinToday.map((line) => (line.key === about["piece_id"] ? { ...line, said: saidBy(act, "joined") } : line)) };
    case "pressed":
      return { ...view, pressNext: view.pressNext.map((line) => (line.key === about["set_id"] ? { ...line, said: saidBy(act, "pressed") } : line)) };
    case "moved":
      return placed(view, about["piece_id"], { id: about["place_id"] ?? "", name: about["place_name"] ?? "" });
    case "scrapped":
      return without(view, about["piece_id"]);
    default:
      return view;
  }
}

/** Words change and rows move between blocks; nothing is reckoned here. */
export function overlay(snapshot: BenchAnswer, acts: readonly KeptAct[]): BenchView {
  return unseenBy(snapshot.journal_seq, acts).reduce(after, viewOf(snapshot));
}

/** For ten seconds an answered line stays where it was, with its Undo. */
export const UNDO_MS = 10_000;

export type Recent = {
  /** Where it stood in its block. */
  place: number;
  said: Tapped;
} & ({ block: "lookNow" | "laterToday" | "later" | "coverNow"; line: PieceLine } | { block: "joinToday"; line: JoinLine });

function held<Kind extends Line>(lines: readonly Kind[], recents: readonly { line: Kind; place: number; said: Said }[]): Kind[] {
  const kept = [...lines];
  for (const { line, place, said } of [...recents].sort((one, other) => one.place - other.place)) {
    kept.splice(Math.min(place, kept.length), 0, { ...line, said });
  }
  return kept;
}

/** Lay the lines answered a moment ago over the view, each in its old place and nowhere else. */
export function withRecents(view: BenchView, recents: readonly Recent[], acts: readonly KeptAct[]): BenchView {
  const isHeard = (said: Tapped): boolean => said.isStored && acts.every((act) => act.id !== said.actId || act.state !== "waiting");
  const fresh = recents.map((recent) => ({ ...recent, said: { ...recent.said, isKept: !isHeard(recent.said) } }));
  const pieces = fresh.filter((recent) => recent.block !== "joinToday");
  const joins = fresh.filter((recent) => recent.block === "joinToday");
  const isElsewhere = (line: PieceLine): boolean =>
    !pieces.some(({ line: held }) => held.key === line.key || (line.row.part === null && held.row.piece.id === line.row.piece.id));
  const block = (name: "lookNow" | "laterToday" | "later" | "coverNow"): PieceLine[] =>
    held(view[name].filter(isElsewhere), pieces.filter((recent) => recent.block === name));
  return {
    ...view,
    lookNow: block("lookNow"),
    laterToday: block("laterToday"),
    later: block("later"),
    coverNow: block("coverNow"),
    drying: view.drying.filter(isElsewhere),
    joinToday: held(view.joinToday.filter((line) => !joins.some((recent) => recent.line.key === line.key)), joins),
  };
}

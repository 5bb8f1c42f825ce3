/** What can happen to a load: each step with its words, what it asks, and the act it makes. */
import type { EventKind, LoadState, Outcome, Result } from "../../api/shapes-firings";
import type { JsonObject } from "../../offline/kept-act";
import type { ScreenAct } from "../common/use-outbox";

export interface Step {
  kind: EventKind;
  /** On the act: *Settle load*. */
  act: string;
  /** In the title of its sheet. */
  title: string;
  /** On the main act of its sheet, before the number of the load. */
  main: string;
  /** What comes of it. */
  says: string;
  /** A reason is wanted, or is as good as a temperature. */
  reason: "none" | "wanted" | "may" | "or_celsius";
  celsius: "none" | "may" | "or_reason";
  hasOutcome: boolean;
  /** A claim is taken when the studio hears it; a fact when it happened. */
  isClaim: boolean;
}

const step = (kind: EventKind, act: string, title: string, main: string, says: string, more: Partial<Step> = {}): Step => ({
  kind, act, title, main, says, reason: "none", celsius: "none", hasOutcome: false, isClaim: false, ...more,
});

export const STEPS: Record<EventKind, Step> = {
  settled: step("settled", "Settle load", "settle", "Settle", "Nobody can put ware on it or take ware off after that. Each maker is told what of theirs is in.", { isClaim: true }),
  reopened: step("reopened", "Open again…", "open again", "Open again", "Ware can be put on and taken off again, until it is settled anew. Everybody with ware in it can read why.", { isClaim: true, reason: "wanted" }),
  loading: step("loading", "Loading", "loading", "Loading", "Its ware goes into the kiln; where each piece came from is kept."),
  started: step("started", "Lit…", "lit", "Lit", "Look at each before you light it."),
  stopped: step("stopped", "It went out…", "it went out", "It went out", "Power lost, tripped or switched off before its end. What becomes of it is decided next; no firing is counted yet.", { reason: "may", celsius: "may" }),
  resumed: step("resumed", "Light again…", "lit again", "Lit again", "The gap stays in its log.", { reason: "may" }),
  ended: step("ended", "Ended…", "ended", "Ended", "The elements are off and it cools by itself. Whether it fired may be said now, or when it is unloaded.", { hasOutcome: true, celsius: "may", reason: "may" }),
  opened: step("opened", "Open…", "opened", "Opened", "Read the temperature before the door moves.", { celsius: "or_reason", reason: "or_celsius" }),
  unloaded: step("unloaded", "Unload", "unload", "Unloaded", "", {}),
  called_off: step("called_off", "Call off…", "call off", "Call off", "Ware in it goes back to where it was. No firing is counted.", { reason: "wanted" }),
};

/** What the state comes to after an event, as the studio folds it; for what is kept on this phone. */
const AFTER: Record<EventKind, LoadState> = {
  settled: "settled", reopened: "open", loading: "loading", started: "firing", stopped: "stopped", resumed: "firing", ended: "cooling", opened: "opened", unloaded: "unloaded",
  called_off: "called_off",
};
const NEXTS: Record<LoadState, readonly EventKind[]> = {
  open: ["settled", "called_off"], settled: ["loading", "reopened", "called_off"], loading: ["started", "called_off"], firing: ["ended", "stopped"], stopped: ["resumed", "ended"],
  cooling: ["opened"], opened: ["unloaded"], unloaded: [], called_off: [],
};

export function stateAfter(kind: EventKind): LoadState {
  return AFTER[kind];
}

export function nextsOf(state: LoadState): readonly EventKind[] {
  return NEXTS[state];
}

export function isEventKind(kind: string | undefined): kind is EventKind {
  return kind !== undefined && kind in AFTER;
}

interface Of {
  id: string;
  number: string;
}

export interface EventTyped {
  celsius?: number | string;
  outcome?: Outcome | "";
  reason?: string;
  note?: string;
  results?: { placement_id: string; result: Result }[];
  place_id?: string;
  happenedAt?: Date;
}

export function eventAct(load: Of, kind: EventKind, basedOn: number, typed: EventTyped = {}): ScreenAct {
  const { happenedAt, celsius, outcome, reason, note, results, place_id } = typed;
  const fields: JsonObject = {
    kind,
    ...(celsius === undefined ? {} : { celsius }),
    ...(outcome ? { outcome } : {}),
    ...(reason?.trim() ? { reason: reason.trim() } : {}),
    ...(note?.trim() ? { note: note.trim() } : {}),
    ...(results && results.length > 0 ? { results } : {}),
    ...(place_id ? { place_id } : {}),
  };
  return {
    path: `loads/${load.id}/events/`, fields, basedOn, verb: "load_told", about: { load_id: load.id, kind, ...(outcome ? { outcome } : {}) },
    words: `${load.number}: ${STEPS[kind].main.toLowerCase()}`, ...(happenedAt ? { happenedAt } : {}),
  };
}

export function readingAct(load: Of, reading: { value: number | string; celsius: number; set: number | string | null; said: string }, basedOn: number, happenedAt?: Date): ScreenAct {
  return {
    path: `loads/${load.id}/readings/`, fields: { reading_c: reading.value, ...(reading.set === null ? {} : { set_c: reading.set }) }, basedOn,
    verb: "kiln_read", about: { load_id: load.id, celsius: String(reading.celsius) }, words: `${load.number}: reads ${reading.said}`, ...(happenedAt ? { happenedAt } : {}),
  };
}

/** A reading that was asked about is mended by the same act again, naming the one it corrects. */
export function mendedReading(load: Of, reading: { act_id: string; taken_at: string }, celsius: number, said: string, basedOn: number): ScreenAct {
  return {
    path: `loads/${load.id}/readings/`, fields: { reading_c: celsius }, corrects: reading.act_id, basedOn, happenedAt: new Date(reading.taken_at),
    verb: "kiln_read", about: { load_id: load.id, celsius: String(celsius), corrects: reading.act_id }, words: `${load.number}: reads ${said}`,
  };
}

export interface ConeTyped {
  level: number | null;
  role: "guide" | "firing" | "guard";
  cone: string;
  hand: number;
}

export function conesAct(load: Of, cones: readonly ConeTyped[], basedOn: number): ScreenAct {
  return {
    path: `loads/${load.id}/cones/`, fields: { cones: cones.map(({ level, role, cone, hand }) => ({ level, role, cone, clock_hand: hand })) }, basedOn,
    verb: "cones_read", about: { load_id: load.id }, words: `${load.number}: cones as seen`,
  };
}

export interface WareAsked {
  id: string;
  mark: string;
}

export function placingAct(load: Of, ware: readonly WareAsked[], basedOn: number, reason = ""): ScreenAct {
  const marks = ware.map(({ mark }) => mark).join(", ");
  return {
    path: `loads/${load.id}/placements/`, basedOn, verb: "put_on_load",
    fields: { pieces: ware.map(({ id }) => ({ piece_id: id })), ...(reason ? { override_reason: reason } : {}) },
    about: { load_id: load.id, number: load.number, marks, piece_ids: ware.map(({ id }) => id).join(" "), ...(ware.length === 1 ? { piece_id: ware[0]?.id ?? "" } : {}) },
    words: `${ware.length === 1 ? marks : load.number}: put ${ware.length === 1 ? "" : `${marks} `}on ${load.number}`,
  };
}

export function removalAct(load: Of, placement: { id: string; mark: string; pieceId: string | null }, basedOn: number): ScreenAct {
  return {
    path: `placements/${placement.id}/removals/`, fields: {}, basedOn, verb: "took_off_load",
    about: { load_id: load.id, placement_id: placement.id, mark: placement.mark, ...(placement.pieceId ? { piece_id: placement.pieceId } : {}) },
    words: `${placement.mark}: taken off ${load.number}`,
  };
}

export interface TicketTyped {
  kind: "bisque" | "glaze";
  cone: string;
  words: string;
  /** Of ware that was fired before. */
  fault?: string | null;
  mended?: string[];
}

export function ticketAct(piece: { id: string; mark: string }, { kind, cone, words, fault, mended }: TicketTyped, basedOn: number): ScreenAct {
  return {
    path: `pieces/${piece.id}/firing-tickets/`, basedOn,
    fields: { kind, cone: cone.trim(), ...(words.trim() ? { words: words.trim() } : {}), ...(fault ? { fault } : {}), ...(mended?.length ? { mended } : {}) },
    verb: "asked_for_cone", about: { piece_id: piece.id }, words: `${piece.mark}: waits for a ${kind}, cone ${cone.trim()}`,
  };
}

/** The rule of the queue is set aside for a piece; everybody reads why. */
export function turnAct(piece: { id: string; mark: string }, kind: "bisque" | "glaze", reason: string, basedOn: number): ScreenAct {
  return {
    path: `pieces/${piece.id}/queue-turns/`, fields: { kind, reason: reason.trim() }, basedOn,
    verb: "put_first", about: { piece_id: piece.id }, words: `${piece.mark}: first for a ${kind} firing`,
  };
}

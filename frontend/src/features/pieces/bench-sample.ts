/** Rows and acts to test the bench with: one maker, three moulds filled, at nine on a Saturday. */
import type { BenchAnswer, BenchRow, JoinRow, MouldRow } from "../../api/shapes";
import type { KeptAct } from "../../offline/kept-act";

export const NOW = new Date("2026-10-31T09:00:00Z");
export const ZONE = "Europe/London";

export const hours = (from_now: number): string => new Date(NOW.getTime() + from_now * 3_600_000).toISOString();
const at = (p50: number): { p10: string; p50: string; p90: string; p_never: number } => ({
  p10: hours(p50 - 1), p50: hours(p50), p90: hours(p50 + 2), p_never: 0,
});
const guess = { basis: "guess", checks: 0 } as const;
const nell = { id: "nell", first_name: "Nell", initials: "NQ" };

export function row(mark: string, more: Partial<BenchRow> = {}): BenchRow {
  return {
    piece: { id: `piece-${mark}`, mark, noun: "tile", design_name: "barley tile", stage: "pressing", state: "in_mould", state_words: "in mould" },
    part: { id: `part-${mark}`, role: "tile", state: "in_mould" },
    mould: { set_id: "set-M02", label: "M02", generation: 1, press_since_dry: 2 },
    place: { id: "bench-1", name: "Bench 1" },
    maker: nell, mine: true, since_at: hours(-16.7), verdict: "past", reason: "second press since M02 was dry",
    window: { opens: at(-3), closes: at(-1) }, ready_at: null, look_again_at: null, cover_next: null, confidence: guess, forecast_at: hours(-0.1), clash_id: null,
    ...more,
  };
}

export function dryingRow(mark: string, more: Partial<BenchRow> = {}): BenchRow {
  return row(mark, { part: null, mould: null, window: null, verdict: "drying", since_at: hours(-26), ready_at: at(60), ...more });
}

export function joinRow(mark: string, more: Partial<JoinRow> = {}): JoinRow {
  return {
    piece: row(mark).piece, parts: [{ id: "b", role: "body", state: "out" }, { id: "h", role: "handle", state: "out" }],
    place: null, maker: nell, mine: true, verdict: "now", reason: "all parts likely leather-hard together", window: null, until: hours(4), cover_next: null,
    confidence: guess, clash_id: null, ...more,
  };
}

export function mouldRow(label: string, more: Partial<MouldRow> = {}): MouldRow {
  return {
    set: { id: `set-${label}`, label, makes: "tray" }, casting: { id: "c", generation: 1 }, parts: [], place: { id: "p1", name: "Shelf P1" }, owner: null,
    dryness: { word: "dry", free_water_fraction: 0.01, presses_since_dry: 0 }, may_press: true, reason: "dry and free", next_booking: null, ...more,
  };
}

export function benchAnswer(more: Partial<BenchAnswer> = {}): BenchAnswer {
  return {
    at: hours(0), journal_seq: 100, forecast_at: hours(-0.1), confidence: guess,
    look_now: [row("T26"), row("J08", { verdict: "in_window" }), row("L08", { verdict: "in_window" })],
    later_today: [row("T25", { verdict: "later", window: { opens: at(0.95), closes: at(5) } })],
    later: [], join_today: [], press_next: [mouldRow("M09")], drying: [dryingRow("J06")], ready_for_bisque: [], ...more,
  };
}

export function kept(verb: string, about: Record<string, string>, more: Partial<KeptAct> = {}): KeptAct {
  return {
    order: 1, id: `act-${verb}`, username: "nell", slug: "barn", path: "/", body: {}, verb, about, words: "", creates: [], photo: null,
    made_at: hours(0.07), state: "waiting", tries: 0, waitUntil: 0, isWaitAsked: false, seq: null, problem: null, ...more,
  };
}

/** One load and its answers, for tests: made up, in the shapes of the API. */
import type { FitAnswer, KilnNow, KilnReading, KilnsAnswer, LoadEvent, LoadWhole, Placement } from "../../api/shapes-firings";

export const PIET = { id: "m-piet", first_name: "Piet", initials: "PA" };
const SHED = { id: "k1-place", name: "K1 Ox" };

export function reading(elapsed_h: number, reading_c: number, more: Partial<KilnReading> = {}): KilnReading {
  const taken_at = new Date(Date.parse("2026-10-30T17:30:00Z") + elapsed_h * 3_600_000).toISOString();
  return {
    id: `r${String(elapsed_h)}`, act_id: `a${String(elapsed_h)}`, taken_at, elapsed_h, reading_c, set_c: null, words: "", use: "taken", why: "", instead_c: null, member: PIET,
    ...more,
  };
}

export function event(kind: LoadEvent["kind"], happened_at: string, more: Partial<LoadEvent> = {}): LoadEvent {
  return {
    id: `e-${kind}`, kind, words: kind, happened_at, written_at: happened_at, member: PIET, celsius: null, outcome: "", reason: "", note: null,
    is_taken_back: false, is_misfit: false, ...more,
  };
}

export function placement(mark: string, more: Partial<Placement> = {}): Placement {
  return {
    id: `p-${mark}`, piece: { id: `x-${mark}`, mark, noun: "tile", design_name: "barley tile", stage: "drying", state: "bone_dry", state_words: "bone dry" },
    what: "", count: 1, maker: PIET, mine: false, asked_by: PIET, placed_at: "2026-10-30T09:00:00Z", level: null, x_mm: null, y_mm: null, rotation_deg: 0,
    size: null, litres: 1, override_reason: "", overrides: [], is_held: false, warnings: [], came_from: null, result: "", ...more,
  };
}

export function load(more: Partial<LoadWhole> = {}): LoadWhole {
  return {
    id: "l1", number: "F-211", kind: "bisque", cone: "04", state: "open", state_words: "open", outcome: "", kiln: { id: "k1", number: "K1", name: "Ox", place_id: SHED.id },
    starts_at: "2026-11-02T18:00:00Z", cutoff_at: "2026-11-02T16:00:00Z", expected_end_at: "2026-11-03T06:00:00Z", watcher: PIET,
    is_unplanned: false, is_interrupted: false, is_in_doubt: false, needs_kiln: false, pieces: 2, things: 0, makers: [{ person: PIET, pieces: 2, litres: 2 }], litres: 2,
    times: { settled_at: null, loaded_at: null, started_at: null, stopped_at: null, resumed_at: null, ended_at: null, opened_at: null, unloaded_at: null, called_off_at: null },
    firing_h: null, revision: 3, programme: null, reading_every_min: 60, expected_h: 12, limit_c: 100,
    may: { add: true, settle: true, reopen: true, record: true, call_off: true, change: true, override: false },
    nexts: ["settled", "called_off"], placements: [placement("T21"), placement("J05")], warnings: [], cautions: [], checklist: [], events: [], readings: [],
    worst_gap: null, planned_now_c: null, curve: [], cones: [], hot_h: 0, gap_h: 0, opening: null, stopped: null, clock_change: null, misfits: [], next_load: null, next_slot: null,
    ...more,
  };
}

export function kiln(more: Partial<KilnNow> = {}): KilnNow {
  return {
    id: "k1", number: "K1", name: "Ox", kind: "front", chamber: "rect", width_mm: 600, depth_mm: 600, diameter_mm: null, height_mm: 800, litres: 288, top_c: 1280,
    place: SHED, revision: 1, is_out_of_use: false, out_of_use_reason: "", out_of_use_since: null, elements_changed_on: "2025-03-01", firings_before: 90,
    hot_hours_before: 600, sensor_firings_before: 40, cooling_k_per_h: null, firings: 96, sensor_firings: 41, hot_h: 640, remarks: "",
    health: {
      elements_words: "96 firings, 640 h hot", elements_since: "2025-03-01", sensor_words: "41 firings", ohms: [], ohms_words: "not measured", trend: "", shelf_count: null, notes: [],
    }, shelves: [], posts: [],
    doing: { word: "empty", words: "empty", till: null, watcher: null, load: null, reading: null }, opening: null, next_loads: [], ...more,
  };
}

export function kilns(...results: KilnNow[]): KilnsAnswer {
  return { at: "2026-10-31T09:00:00Z", journal_seq: 100, results, cautions: [] };
}

export function fit(more: Partial<FitAnswer> = {}): FitAnswer {
  return {
    at: "2026-10-31T09:00:00Z", journal_seq: 100, verdict: "fits", sentence: "Fits: 2 pieces on 1 layer; no room for another shelf.", reasons: [], levels: [],
    left_out: [], layers_left: 0, used_height_mm: 180, spare_ware_mm: null, tallest: { mark: "J05", height_mm: 129 }, ...more,
  };
}

/** A load and the kilns as this phone knows them: what the studio last said, with what was told here laid over it. */
import type { ConeSeen, KilnNow, KilnsAnswer, LoadAnswer, LoadEvent, LoadWhole, KilnReading, Placement } from "../../api/shapes-firings";
import type { PersonRef } from "../../api/shapes";
import { unseenBy } from "../../offline/kept-act";
import type { KeptAct } from "../../offline/kept-act";
import { isEventKind, nextsOf, STEPS, stateAfter } from "./load-acts";

const HOUR_MS = 3_600_000;

export interface AskedWare {
  id: string;
  marks: string;
  /** Waits on the phone; else the studio has it, and the next answer shows it. */
  isKept: boolean;
}

export interface LoadView {
  load: LoadWhole;
  /** Ware asked for, not yet answered: it is on the load only when the studio says so. */
  asked: AskedWare[];
  /** Acts told here that the studio's answer cannot show yet. */
  kept: readonly KeptAct[];
  /** Ids of rows that are kept here and not yet heard. */
  keptIds: ReadonlySet<string>;
}

type ConeRow = Pick<ConeSeen, "level" | "role" | "cone" | "clock_hand">;

function happenedAt(act: KeptAct): string {
  const at = act.body["happened_at"];
  return typeof at === "string" ? at : act.made_at;
}

const textIn = (act: KeptAct, name: string): string => {
  const value = act.body[name];
  return typeof value === "string" ? value : "";
};

function told(load: LoadWhole, act: KeptAct, member: PersonRef): LoadWhole {
  const { kind } = act.about;
  if (!isEventKind(kind)) return load;
  const at = happenedAt(act);
  const state = stateAfter(kind);
  const celsius = act.body["celsius"];
  const event: LoadEvent = {
    id: act.id, kind, words: STEPS[kind].main.toLowerCase(), happened_at: at, written_at: act.made_at, member, celsius: typeof celsius === "number" ? celsius : null,
    outcome: act.about["outcome"] ?? "", reason: textIn(act, "reason"), note: textIn(act, "note") || null, is_taken_back: false, is_misfit: false,
  };
  const times = { ...load.times, ...timeOf(kind, at) };
  return { ...load, state, times, events: [...load.events, event], nexts: [...nextsOf(state)], outcome: event.outcome || load.outcome };
}

function timeOf(kind: LoadEvent["kind"], at: string): Partial<LoadWhole["times"]> {
  switch (kind) {
    case "loading":
      return { loaded_at: at };
    case "reopened":
      return { settled_at: null };
    case "settled":
    case "started":
    case "stopped":
    case "resumed":
    case "ended":
    case "opened":
    case "unloaded":
    case "called_off":
      return { [`${kind}_at`]: at };
  }
}

function read(load: LoadWhole, act: KeptAct, member: PersonRef): LoadWhole {
  const celsius = Number(act.about["celsius"]);
  if (!Number.isFinite(celsius)) return load;
  const taken_at = happenedAt(act);
  const { started_at } = load.times;
  const set = act.body["set_c"];
  const reading: KilnReading = {
    id: act.id, act_id: act.id, taken_at, elapsed_h: started_at === null ? null : (Date.parse(taken_at) - Date.parse(started_at)) / HOUR_MS, reading_c: celsius,
    set_c: typeof set === "number" ? set : null, words: "", use: "taken", why: "", instead_c: null, member,
  };
  const others = load.readings.filter((one) => one.act_id !== act.about["corrects"]);
  return { ...load, readings: [...others, reading].sort((one, other) => Date.parse(one.taken_at) - Date.parse(other.taken_at)) };
}

/** Cones told here, of which the studio has not said yet how each hand is called. */
function conesIn(act: KeptAct): ConeSeen[] {
  const rows = act.body["cones"];
  if (!Array.isArray(rows)) return [];
  return (rows as ConeRow[]).map((row) => ({ ...row, id: `${act.id} ${String(row.level)} ${row.role}`, hand_words: "", words: "", happened_at: happenedAt(act) }));
}

function after(load: LoadWhole, act: KeptAct, member: PersonRef): LoadWhole {
  switch (act.verb) {
    case "load_told":
      return told(load, act, member);
    case "kiln_read":
      return read(load, act, member);
    case "cones_read":
      return { ...load, cones: [...load.cones, ...conesIn(act)] };
    case "took_off_load":
      return { ...load, placements: load.placements.filter((row) => row.id !== act.about["placement_id"]) };
    default:
      return load;
  }
}

function withoutTakenBack(load: LoadWhole, acts: readonly KeptAct[]): LoadWhole {
  const gone = new Set(acts.filter((act) => act.verb === "retracted").map((act) => act.about["corrects"]));
  if (gone.size === 0) return load;
  return {
    ...load,
    events: load.events.map((event) => (gone.has(event.id) ? { ...event, is_taken_back: true } : event)),
    readings: load.readings.filter((reading) => !gone.has(reading.act_id)),
  };
}

/** Words change and rows come and go; what fits, and what a curve means, is the studio's to say. */
export function loadView({ load, journal_seq }: LoadAnswer, acts: readonly KeptAct[], member: PersonRef): LoadView {
  const unseen = unseenBy(journal_seq, acts);
  const mine = unseen.filter((act) => act.about["load_id"] === load.id);
  const known = new Set([...load.events.map(({ id }) => id), ...load.readings.map(({ act_id }) => act_id)]);
  const undone = unseen.filter((act) => act.verb === "retracted" && known.has(act.about["corrects"] ?? ""));
  return {
    load: mine.reduce((so_far, act) => after(so_far, act, member), withoutTakenBack(load, undone)),
    asked: mine.filter((act) => act.verb === "put_on_load").map((act) => ({ id: act.id, marks: act.about["marks"] ?? "", isKept: act.state === "waiting" })),
    kept: [...mine, ...undone],
    keptIds: new Set(mine.filter((act) => act.state === "waiting").map((act) => act.id)),
  };
}

export interface NewLoad {
  id: string;
  words: string;
  startsAt: string;
  kilnId: string;
  isKept: boolean;
}

export interface KilnsView {
  kilns: KilnNow[];
  opened: NewLoad[];
}

function afterInKiln(kiln: KilnNow, act: KeptAct): KilnNow {
  const isHere = kiln.doing.load?.id === act.about["load_id"];
  if (act.verb === "kiln_told" && act.about["kiln_id"] === kiln.id) {
    const isOut = act.about["kind"] === "out_of_use";
    const doing = isOut ? { ...kiln.doing, word: "out_of_use", words: "out of use" } : { ...kiln.doing, word: kiln.doing.load === null ? "empty" : kiln.doing.word };
    return { ...kiln, is_out_of_use: isOut, out_of_use_reason: isOut ? textIn(act, "reason") : "", doing };
  }
  if (act.verb === "load_told" && isHere && isEventKind(act.about["kind"])) {
    const state = stateAfter(act.about["kind"]);
    const isOver = state === "unloaded" || state === "called_off";
    return { ...kiln, opening: null, doing: { ...kiln.doing, word: isOver ? "empty" : state, till: null, ...(isOver ? { load: null, reading: null, watcher: null } : {}) } };
  }
  if (act.verb === "kiln_read" && isHere) {
    return { ...kiln, doing: { ...kiln.doing, reading: { reading_c: Number(act.about["celsius"]), taken_at: happenedAt(act) } } };
  }
  return kiln;
}

export function kilnsView({ results, journal_seq }: KilnsAnswer, acts: readonly KeptAct[]): KilnsView {
  const unseen = unseenBy(journal_seq, acts);
  return {
    kilns: results.map((kiln) => unseen.reduce(afterInKiln, kiln)),
    opened: unseen.filter((act) => act.verb === "opened_load").map((act) => ({
      id: act.id, words: act.about["what"] ?? "", startsAt: textIn(act, "starts_at"), kilnId: act.about["kiln_id"] ?? "", isKept: act.state === "waiting",
    })),
  };
}

/** On which shelf each thing stands: as placed, else as the picture has it; null where neither says. */
export function levelOf(placement: Placement, levels: readonly { level: number; items: readonly { placement_id: string | null }[] }[]): number | null {
  return levels.find(({ items }) => items.some((item) => item.placement_id === placement.id))?.level ?? placement.level;
}

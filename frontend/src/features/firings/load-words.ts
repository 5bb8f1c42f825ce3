/** Loads in words: what a load is, what stands over it, when it may be opened. */
import type { Coming, FitAnswer, KilnNow, LoadBrief, LoadWhole, Opening, Placement } from "../../api/shapes-firings";
import { clock, date, dayAndClock } from "../../domain/clock";
import { about, count, halves, joinFacts, length, temperature, THIN, upperFirst } from "../../domain/format";
import type { Units } from "../../domain/format";
import type { NatchKind } from "../../ui/natch";
import { ranHot } from "./cone-words";
import { usedReadings } from "./curve-geometry";

/** Two times that differ by less are one: the likely one is only known to ten minutes. */
const ROUNDED_MS = 15 * 60_000;

export interface Around {
  now: Date;
  zone: string;
  units: Units;
}

/** Above this the elements age and ware is fired: the studio counts hours from there. */
const HOT_C = 600;

export function hotWords(hours: number, { units }: Pick<Around, "units">): string {
  return `${halves(hours)}${THIN}h above ${temperature(HOT_C, units)}`;
}

export const KINDS = { bisque: "bisque", glaze: "glaze", test: "test" } as const;

/** `K1 Ox, bisque, cone 04` */
export function loadTitle({ kiln, kind, cone }: Pick<LoadBrief, "kiln" | "kind" | "cone">): string {
  return `${kiln.number} ${kiln.name}, ${kind}${cone ? `, cone ${cone}` : ""}`;
}

export interface Verdict {
  verdict: string;
  evidence: string;
  natch: NatchKind;
  isLive: boolean;
}

const OUTCOMES: Record<string, string> = { fired: "Fired", not_fired: "Not fired", unsure: "Not sure whether fired" };

export function outcomeWords(outcome: string): string {
  return OUTCOMES[outcome] ?? "Outcome not said";
}

/** `likely 100 °C about 21:30`, with when somebody is in where that is later. */
export function openingWords(opening: Opening | null, { now, zone, units }: Around): string {
  if (opening === null || opening.likely === null) return "read it to know when it opens";
  const likely = new Date(opening.likely);
  const at = `likely ${temperature(opening.limit_c, units)} ${likely <= now ? "by now" : about(likely, now, zone)}`;
  const isLater = opening.staffed_at !== null && Date.parse(opening.staffed_at) > Math.max(likely.getTime(), now.getTime()) + ROUNDED_MS;
  return !isLater || opening.staffed_at === null ? at : joinFacts(at, `somebody in ${dayAndClock(new Date(opening.staffed_at), now, zone)}`);
}

const BASES: Record<Opening["basis"], string> = {
  readings: "from its own readings", known: "from how this kiln cooled before", guess: "a guess: this kiln was never watched cooling",
};

export function openingBasis({ basis }: Opening): string {
  return BASES[basis];
}

export function fitWords(fit: FitAnswer | null, units: Units): Verdict {
  if (fit === null) return { verdict: "Not reckoned yet", evidence: "the studio says what fits when it is heard", natch: "guess", isLive: false };
  const levels = fit.levels.filter((level) => level.items.length > 0).length;
  const tallest = fit.tallest && `tallest ${fit.tallest.mark}, ${length(fit.tallest.height_mm, units)}`;
  const evidence = joinFacts(tallest, levels > 0 && count(levels, "level", "levels"), fit.layers_left > 0 && `room for ${count(fit.layers_left, "more level", "more levels")}`);
  switch (fit.verdict) {
    case "fits":
      return { verdict: levels === 0 ? "Empty" : "Fits", evidence: evidence || fit.sentence, natch: levels === 0 ? "done" : "today", isLive: false };
    case "doubtful":
      return { verdict: "Doubtful", evidence, natch: "guess", isLive: false };
    case "does_not_fit":
      return { verdict: "Does not fit", evidence, natch: "refused", isLive: true };
  }
}

function lastWords({ readings }: LoadWhole, units: Units): string | null {
  const last = usedReadings(readings).at(-1)?.reading;
  return last ? temperature(last.reading_c, units) : null;
}

/** What stands large over a load that is past its booking. */
export function loadVerdict(load: LoadWhole, around: Around): Verdict {
  const { now, zone, units } = around;
  const last = lastWords(load, units);
  const when = (iso: string | null): string => (iso === null ? "" : dayAndClock(new Date(iso), now, zone));
  const watches = load.watcher ? `${load.watcher.first_name} watches` : "nobody is named to watch";
  switch (load.state) {
    case "open":
      return { verdict: "Open", evidence: `until ${when(load.cutoff_at)}`, natch: "next", isLive: false };
    case "settled":
      return { verdict: "Settled", evidence: joinFacts(load.times.settled_at && `since ${when(load.times.settled_at)}`, `starts ${when(load.starts_at)}`), natch: "next", isLive: false };
    case "loading":
      return { verdict: "Loading", evidence: joinFacts(`starts ${when(load.starts_at)}`, watches), natch: "hand", isLive: false };
    case "firing":
      return {
        verdict: last ? `Firing, ${last}` : "Firing", natch: "hand", isLive: false,
        evidence: joinFacts(load.planned_now_c !== null && `programme now ${temperature(load.planned_now_c, units)}`, watches),
      };
    case "stopped":
      return { verdict: "Stopped, decide", evidence: joinFacts(`out since ${when(load.times.stopped_at)}`, last && `last read ${last}`), natch: "past", isLive: true };
    case "cooling":
      return { verdict: last ? `Cooling, ${last}` : "Cooling", evidence: openingWords(load.opening, around), natch: "guess", isLive: false };
    case "opened":
      return { verdict: "Opened, to unload", evidence: `opened ${when(load.times.opened_at)}`, natch: "hand", isLive: false };
    case "unloaded":
      return { verdict: `${outcomeWords(load.outcome)}${ranHot(load.cones) === null ? "" : ", ran hot"}`, evidence: joinFacts(`${load.kind}, cone ${load.cone}`, `out ${when(load.times.unloaded_at)}`), natch: "done", isLive: false };
    case "called_off":
      return { verdict: "Called off", evidence: joinFacts(when(load.times.called_off_at), reasonOf(load)), natch: "done", isLive: false };
  }
}

function reasonOf({ events }: LoadWhole): string | null {
  return events.filter((event) => event.kind === "called_off" && !event.is_taken_back).at(-1)?.reason ?? null;
}

const DOING: Record<string, string> = {
  empty: "Empty", open: "Open for ware", settled: "Settled", loading: "Loading", firing: "Firing", stopped: "Stopped, decide", cooling: "Cooling", opened: "Opened, to unload",
  out_of_use: "Out of use",
};
const NATCHES: Record<string, NatchKind> = { open: "next", settled: "next", loading: "hand", firing: "hand", stopped: "past", cooling: "guess", opened: "hand" };

/** The row of a kiln: doing what, till when, who watches. */
export function kilnVerdict(kiln: KilnNow, around: Around): Verdict {
  const { doing, opening } = kiln;
  const { now, zone, units } = around;
  const word = DOING[doing.word] ?? upperFirst(doing.words);
  const verdict = doing.reading ? `${word}, ${temperature(doing.reading.reading_c, units)}` : word;
  const read = doing.reading && `read ${dayAndClock(new Date(doing.reading.taken_at), now, zone)}`;
  const watches = doing.watcher && `${doing.watcher.first_name} watches`;
  const till = doing.till === null ? null : dayAndClock(new Date(doing.till), now, zone);
  const base = { verdict, natch: NATCHES[doing.word] ?? "done", isLive: doing.word === "stopped" };
  switch (doing.word) {
    case "cooling":
      return { ...base, evidence: joinFacts(openingWords(opening, around), watches) };
    case "firing":
    case "loading":
      return { ...base, evidence: joinFacts(read, till && `till about ${till}`, watches) };
    case "out_of_use":
      return { ...base, evidence: kiln.out_of_use_reason };
    case "open":
    case "settled":
      return { ...base, evidence: joinFacts(doing.load?.number, till && `starts ${till}`, watches) };
    case "empty":
      return { ...base, evidence: "no load is booked" };
    default:
      return { ...base, evidence: joinFacts(doing.load?.number, read, watches) };
  }
}

/** `Mon 2 Nov, 18:00` */
export function slotWords(iso: string, zone: string): string {
  const at = new Date(iso);
  // A day without "now" beside it always names its month: a slot is read days ahead.
  return `${date(at, new Date(0), zone).replace(/ \d{4}$/, "")}, ${clock(at, zone)}`;
}

/** Until when ware may be put on. A load may be settled, or called off, long before. */
export function cutoffWords({ state, cutoff_at }: Pick<Coming, "state" | "cutoff_at">, { now, zone }: Pick<Around, "now" | "zone">): string | undefined {
  const at = slotWords(cutoff_at, zone);
  if (state === "open") return `open to all until ${at}`;
  if (new Date(cutoff_at) <= now) return `closed ${at}`;
  return state === "called_off" ? undefined : "closed to all since it was settled";
}

export function comingEvidence({ kind, cone, pieces, cutoff_at, state }: Coming, { now, zone }: Pick<Around, "now" | "zone">): string {
  const cutoff = new Date(cutoff_at);
  const open = state !== "open" ? state : cutoff < now ? "past its cut-off" : `open until ${dayAndClock(cutoff, now, zone)}`;
  return joinFacts(`${kind}${cone ? `, cone ${cone}` : ""}`, count(pieces, "piece", "pieces"), open);
}

export const RESULTS = { fired: "fired", not_fired: "not fired", broken: "broken", damp: "damp" } as const;

export function placementMark({ piece, what }: Placement): string {
  return piece?.mark ?? upperFirst(what);
}

export function placementWords({ piece, what, count: figure }: Placement): string {
  return piece === null ? `${what}, ${String(figure)}` : `${piece.mark}, ${piece.noun}`;
}

/** What the four weeks show, as instants: loads in their lanes, days on which nobody is in, promises. Nothing is reckoned here. */
import type { KilnNow, LoadBrief, StudioHours } from "../../api/shapes-firings";
import { daysOf, midnightOf } from "../../domain/plot";
import type { DayMark } from "../../domain/plot";
import { wallTime } from "../../domain/clock";

const HOUR_MS = 3_600_000;
export const WEEKS = 4;

export type BarKind = "firing" | "cooling" | "waits" | "booked";

export interface PlanBar {
  kind: BarKind;
  from: Date;
  to: Date;
}

export interface PlanLoad {
  id: string;
  number: string;
  kilnId: string;
  bars: PlanBar[];
}

export interface PlanPromise {
  id: string;
  words: string;
  /** `2026-11-20` on the studio's calendar. */
  date: string;
}

export interface WeeksPlan {
  days: DayMark[];
  kilns: { id: string; number: string; name: string }[];
  loads: PlanLoad[];
  /** Days on which nobody is in, by their place among the days. */
  closed: ReadonlySet<number>;
  promises: PlanPromise[];
}

/** Monday of the week of `at`, four weeks on. */
export function planDays(at: Date, zone: string): DayMark[] {
  const weekdays = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];
  const since = weekdays.indexOf(wallTime(at, zone).weekday);
  const monday = midnightOf(new Date(midnightOf(at, zone).getTime() + (12 - 24 * since) * HOUR_MS), zone);
  // Noon of the last day lies within four weeks, whatever the clocks do.
  const end = new Date(monday.getTime() + (7 * WEEKS - 1) * 24 * HOUR_MS + 12 * HOUR_MS);
  return daysOf(monday, end, at, zone);
}

/** `2026-10-31` on the studio's calendar. */
export function isoDay(at: Date, zone: string): string {
  const { year, month, day } = wallTime(at, zone);
  return `${String(year)}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/** Days the week or the calendar keeps closed. A studio that never said its hours has none. */
export function closedDays(days: readonly DayMark[], hours: StudioHours | null, zone: string): Set<number> {
  if (hours === null || hours.weekly.length === 0) return new Set();
  const open = new Set(hours.weekly.map(({ weekday }) => weekday));
  const closed = new Set(hours.closed_days.map(({ date }) => date));
  // The days begin on a Monday, which is 0 in the studio's hours.
  return new Set(days.flatMap((mark, place) => (open.has(place % 7) && !closed.has(isoDay(mark.middle, zone)) ? [] : [place])));
}

const later = (...times: (string | null | undefined)[]): Date | null => {
  const first = times.find((time) => time !== null && time !== undefined);
  return first === undefined || first === null ? null : new Date(first);
};

function span(kind: BarKind, from: Date | null, to: Date | null): PlanBar[] {
  return from !== null && to !== null && to > from ? [{ kind, from, to }] : [];
}

/** What a load has of firing, cooling and waiting; what is only booked stands as an outline with its head. */
export function barsOf(load: LoadBrief, kiln: KilnNow | undefined, now: Date): PlanBar[] {
  const { times, state } = load;
  if (state === "called_off") return [];
  const opening = kiln?.doing.load?.id === load.id ? kiln.opening : null;
  if (times.started_at === null) {
    const [starts, ends] = [new Date(load.starts_at), later(load.expected_end_at)];
    return [...span("booked", starts, aDayAfter(ends ?? starts)), ...span("firing", starts, ends)];
  }
  const started = new Date(times.started_at);
  const ended = later(times.ended_at, load.expected_end_at) ?? now;
  const cool = later(times.opened_at, opening?.likely);
  const emptied = later(times.unloaded_at, times.opened_at === null ? opening?.staffed_at : null);
  return [...span("firing", started, ended), ...span("cooling", ended, cool), ...span("waits", cool ?? ended, emptied)];
}

/** The picture's own allowance for cooling; its sentence says so. */
function aDayAfter(at: Date): Date {
  return new Date(at.getTime() + 24 * HOUR_MS);
}

interface Heard {
  kilns: readonly KilnNow[];
  loads: readonly LoadBrief[];
  hours: StudioHours | null;
  promises: readonly PlanPromise[];
}

export function planOf({ kilns, loads, hours, promises }: Heard, now: Date, zone: string): WeeksPlan {
  const days = planDays(now, zone);
  const [first, last] = [days[0], days.at(-1)];
  const within = promises.filter(({ date }) => first && last && date >= isoDay(first.middle, zone) && date <= isoDay(last.middle, zone));
  return {
    days,
    kilns: kilns.map(({ id, number, name }) => ({ id, number, name })),
    loads: loads.map((load) => ({
      id: load.id, number: load.number, kilnId: load.kiln.id, bars: barsOf(load, kilns.find((kiln) => kiln.id === load.kiln.id), now),
    })).filter(({ bars }) => bars.length > 0),
    closed: closedDays(days, hours, zone),
    promises: [...within],
  };
}

/** Days named on a time axis: the month stands where it changes. */
import { wallTime } from "../../domain/clock";
import { midnightOf } from "../../domain/plot";

const DAY_MS = 86_400_000;
const STEPS = [1, 2, 3, 7, 14, 28, 56, 112, 224] as const;

export interface TimeMark {
  at: Date;
  words: string;
}

/** The smallest step in days that gives at most `most` marks between two instants. */
export function stepFor(from: Date, to: Date, most: number, least = 1): number {
  const days = (to.getTime() - from.getTime()) / DAY_MS;
  return STEPS.find((step) => step >= least && days / step <= Math.max(1, most - 1)) ?? 448;
}

/** Midnights from `first` on, `step` days apart, up to `until`; each day counted on the studio's calendar. */
export function marksFrom(first: Date, until: Date, step: number, zone: string): TimeMark[] {
  const marks: TimeMark[] = [];
  let month = "";
  for (let at = midnightOf(first, zone); at <= until; at = midnightOf(new Date(at.getTime() + step * DAY_MS + DAY_MS / 2), zone)) {
    const { day, monthName } = wallTime(at, zone);
    marks.push({ at, words: monthName === month ? String(day) : `${String(day)} ${monthName}` });
    month = monthName;
  }
  return marks;
}

const WEEKDAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** Midnight of the Monday of that week. */
export function mondayOf(at: Date, zone: string): Date {
  const back = Math.max(0, WEEKDAYS.indexOf(wallTime(at, zone).weekday));
  return midnightOf(new Date(midnightOf(at, zone).getTime() + DAY_MS / 2 - back * DAY_MS), zone);
}

/** What a chart on a time axis needs: places, paths and day marks. Own SVG is drawn from these; nothing here draws. */
import { daysBetween, wallTime } from "./clock";

const HOUR_MS = 3_600_000;

/** Values from `from` to `to` lie from pixel `start` to pixel `end`; `end` may be the smaller. */
export interface Axis {
  from: number;
  to: number;
  start: number;
  end: number;
}

export interface Point {
  x: number;
  y: number;
}

const round = (pixel: number): number => Math.round(pixel * 10) / 10;

export function placeOn({ from, to, start, end }: Axis, value: number): number {
  return round(start + ((value - from) / (to - from)) * (end - start));
}

/** `M10 20L30 40`; nothing when there are not two points to join. */
export function linePath(points: readonly Point[]): string {
  if (points.length < 2) return "";
  return `M${points.map(({ x, y }) => `${String(x)} ${String(y)}`).join("L")}`;
}

/** The closed shape between two lines, the second run backwards. */
export function bandPath(upper: readonly Point[], lower: readonly Point[]): string {
  if (upper.length < 2 || lower.length < 2) return "";
  return `${linePath([...upper, ...[...lower].reverse()])}Z`;
}

/** The value between the two nearest times, null outside what is known. Times rise. */
export function valueAt(times: readonly number[], values: readonly number[], at: number): number | null {
  const after = times.findIndex((time) => time >= at);
  const later = times[after];
  const value = values[after];
  if (after < 0 || later === undefined || value === undefined) return null;
  if (later === at) return value;
  const [earlier, before] = [times[after - 1], values[after - 1]];
  if (earlier === undefined || before === undefined) return null;
  return before + ((at - earlier) / (later - earlier)) * (value - before);
}

/** The instant at which the wall clock of that day stood at midnight. */
export function midnightOf(at: Date, zone: string): Date {
  const { hour, minute } = wallTime(at, zone);
  const guess = new Date(Math.floor(at.getTime() / 60_000) * 60_000 - (hour * 60 + minute) * 60_000);
  const landed = wallTime(guess, zone).hour;
  // The clocks changed since midnight: the wall hours passed were not the real ones.
  if (landed === 0) return guess;
  return new Date(guess.getTime() + (landed > 12 ? 24 - landed : -landed) * HOUR_MS);
}

export interface DayMark {
  from: Date;
  /** Noon, where the day's name stands. */
  middle: Date;
  weekday: string;
  day: number;
  isToday: boolean;
}

/** The days that have any part between two instants. */
export function daysOf(from: Date, to: Date, now: Date, zone: string): DayMark[] {
  const marks: DayMark[] = [];
  let midnight = midnightOf(from, zone);
  while (midnight < to) {
    const middle = new Date(midnight.getTime() + 12 * HOUR_MS);
    const wall = wallTime(middle, zone);
    marks.push({ from: midnight, middle, weekday: wall.weekday, day: wall.day, isToday: daysBetween(now, middle, zone) === 0 });
    midnight = midnightOf(new Date(midnight.getTime() + 36 * HOUR_MS), zone);
  }
  return marks;
}

/** Every so many days a name, so that at most `most` stand; today's is always among them. */
export function namedDays(days: readonly DayMark[], most: number): { mark: DayMark; words: string }[] {
  const step = Math.max(1, Math.ceil(days.length / Math.max(1, most)));
  const today = Math.max(0, days.findIndex((mark) => mark.isToday));
  return days
    .filter((_, place) => (place - today) % step === 0)
    .map((mark) => ({ mark, words: step === 1 ? mark.weekday : `${mark.weekday} ${String(mark.day)}` }));
}

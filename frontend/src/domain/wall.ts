/** From the studio's wall clock back to an instant: for times a person types. */
import { wallTime } from "./clock";

const MINUTE_MS = 60_000;
const TYPED = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})/;

function asUtc(at: Date, zone: string): number {
  const wall = wallTime(at, zone);
  return Date.UTC(wall.year, wall.month - 1, wall.day, wall.hour, wall.minute);
}

/**
 * The instant at which the wall clock of `zone` shows `typed` (`2026-10-31T08:40`), null when that is no time. An hour that
 * comes twice is the first of the two; one that never comes is the hour after.
 */
export function instantOf(typed: string, zone: string): Date | null {
  const found = TYPED.exec(typed);
  if (!found) return null;
  const [, year, month, day, hour, minute] = found.map(Number);
  const wanted = Date.UTC(year ?? NaN, (month ?? NaN) - 1, day, hour, minute);
  if (Number.isNaN(wanted)) return null;
  const offsets = [-1, 1].map((days) => {
    const near = new Date(wanted + days * 24 * 60 * MINUTE_MS);
    return asUtc(near, zone) - near.getTime();
  });
  const guesses = offsets.map((offset) => new Date(wanted - offset)).sort((one, other) => one.getTime() - other.getTime());
  return guesses.find((guess) => asUtc(guess, zone) === wanted) ?? guesses.at(-1) ?? null;
}

/** Noon of a calendar day on the studio's clock: `2026-11-20`. */
export function noonOf(day: string | null | undefined, zone: string): Date | null {
  return day ? instantOf(`${day}T12:00`, zone) : null;
}

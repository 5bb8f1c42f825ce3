/** Instants as the studio's wall clock reads them. Every function takes the zone; none reads a clock. */

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;

export interface WallTime {
  year: number;
  month: number;
  day: number;
  hour: number;
  minute: number;
  weekday: string;
  monthName: string;
}

const formats = new Map<string, Intl.DateTimeFormat>();

function formatFor(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known) return known;
  const made = new Intl.DateTimeFormat("en-GB", {
    timeZone: zone,
    hourCycle: "h23",
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
    weekday: "short",
  });
  formats.set(zone, made);
  return made;
}

// "Sept" is what en-GB gives for September; the trade's job sheets and the rest of the months have three letters.
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

export function wallTime(at: Date, zone: string): WallTime {
  const parts = new Map(formatFor(zone).formatToParts(at).map((part) => [part.type, part.value]));
  const number = (type: Intl.DateTimeFormatPartTypes): number => Number(parts.get(type));
  return {
    year: number("year"),
    month: number("month"),
    day: number("day"),
    hour: number("hour"),
    minute: number("minute"),
    weekday: parts.get("weekday") ?? "",
    monthName: MONTHS[number("month") - 1] ?? "",
  };
}

/** Whole calendar days from one instant to another on the studio's calendar; negative when `to` is earlier. */
export function daysBetween(from: Date, to: Date, zone: string): number {
  const [first, last] = [wallTime(from, zone), wallTime(to, zone)];
  return (Date.UTC(last.year, last.month - 1, last.day) - Date.UTC(first.year, first.month - 1, first.day)) / DAY_MS;
}

const two = (figure: number): string => String(figure).padStart(2, "0");

/** `09:04` */
export function clock(at: Date, zone: string): string {
  const wall = wallTime(at, zone);
  return `${two(wall.hour)}:${two(wall.minute)}`;
}

/** `Fri 30`, with its month when that is not the month it is now, and its year when that differs too. */
export function date(at: Date, now: Date, zone: string): string {
  const [wall, today] = [wallTime(at, zone), wallTime(now, zone)];
  const year = wall.year === today.year ? "" : ` ${String(wall.year)}`;
  const month = wall.month === today.month && year === "" ? "" : ` ${wall.monthName}`;
  return `${wall.weekday} ${String(wall.day)}${month}${year}`;
}

/** `today`, `yesterday`, else the date. */
export function day(at: Date, now: Date, zone: string): string {
  const away = daysBetween(at, now, zone);
  if (away === 0) return "today";
  return away === 1 ? "yesterday" : date(at, now, zone);
}

/** `09:04` today, `yesterday, 09:04`, else `Fri 30, 09:04`. */
export function dayAndClock(at: Date, now: Date, zone: string): string {
  const name = day(at, now, zone);
  return name === "today" ? clock(at, zone) : `${name}, ${clock(at, zone)}`;
}

/** `Sat 31 Oct, 09:00`: the title of the day. */
export function titleTime(at: Date, zone: string): string {
  const wall = wallTime(at, zone);
  return `${wall.weekday} ${String(wall.day)} ${wall.monthName}, ${clock(at, zone)}`;
}

/** `Mon 2 to Wed 4 Nov`; one day stands alone, two months or years are each named. */
export function dateRange(from: Date, to: Date, zone: string): string {
  const [first, last] = [wallTime(from, zone), wallTime(to, zone)];
  const name = (wall: WallTime): string => `${wall.weekday} ${String(wall.day)}`;
  const end = `${name(last)} ${last.monthName}`;
  if (daysBetween(from, to, zone) === 0) return end;
  if (first.year !== last.year) {
    return `${name(first)} ${first.monthName} ${String(first.year)} to ${end} ${String(last.year)}`;
  }
  return first.month === last.month ? `${name(first)} to ${end}` : `${name(first)} ${first.monthName} to ${end}`;
}

/** When it happened and, if that differs by a minute or more, when it was written down. */
export function twoTimes(happened: Date, written: Date, now: Date, zone: string): string {
  const first = `${date(happened, now, zone)}, ${clock(happened, zone)}`;
  if (Math.abs(written.getTime() - happened.getTime()) < MINUTE_MS) return first;
  return `${first} · written ${date(written, now, zone)}, ${clock(written, zone)}`;
}

/** Minutes the wall clock is ahead of universal time. */
function offsetMinutes(at: Date, zone: string): number {
  const wall = wallTime(at, zone);
  const asUtc = Date.UTC(wall.year, wall.month - 1, wall.day, wall.hour, wall.minute);
  return Math.round((asUtc - Math.floor(at.getTime() / MINUTE_MS) * MINUTE_MS) / MINUTE_MS);
}

/** `11 h 00 of real time` when the clocks change between the two; nothing when the clock tells it truly. */
export function realTime(from: Date, to: Date, zone: string): string | null {
  if (offsetMinutes(from, zone) === offsetMinutes(to, zone)) return null;
  const minutes = Math.round((to.getTime() - from.getTime()) / MINUTE_MS);
  return `${String(Math.floor(minutes / 60))} h ${two(minutes % 60)} of real time`;
}

/** Where everything of a firing curve stands, in pixels of its own box: hours that really passed against temperature. */
import type { KilnReading, LoadWhole } from "../../api/shapes-firings";
import { linePath, placeOn, valueAt } from "../../domain/plot";
import type { Axis, Point } from "../../domain/plot";

const HOUR_MS = 3_600_000;
/** The heights of the plot and of the gap strip, whatever the size of the text. [px] */
export const PLOT_PX = 150;
export const GAP_PX = 26;
const BAR_PX = 9;
/** Steps of the hour axis, the finest first. [h] */
const HOUR_STEPS = [1, 2, 4, 6, 12, 24, 48];
/** A difference of one degree Celsius in degrees Fahrenheit. */
const F_PER_C = 1.8;

export type Degrees = "c" | "f";

export function shownDegrees(celsius: number, unit: Degrees): number {
  return unit === "c" ? celsius : celsius * F_PER_C + 32;
}

export interface GapBar {
  x: number;
  y: number;
  width: number;
  height: number;
}

export interface CurvePicture {
  width: number;
  height: number;
  plot: { left: number; right: number; top: number; bottom: number };
  /** One line for each stretch with power. */
  known: string[];
  programme: string;
  squares: Point[];
  hours: { x: number; words: string }[];
  grid: { y: number; words: string }[];
  unit: string;
  clockChange: { x: number; words: string; anchor: "start" | "end" } | null;
  nowX: number | null;
  gap: { y: number; bars: GapBar[]; worst: { x: number; y: number; words: string; anchor: "start" | "middle" | "end" } | null } | null;
}

export interface CurveAround {
  width: number;
  rem: number;
  unit: Degrees;
  now: Date;
}

type Log = Pick<LoadWhole, "readings" | "curve" | "events" | "times" | "state" | "clock_change" | "worst_gap">;

interface Placed {
  reading: KilnReading;
  hours: number;
}

/** Readings that count, in order; one that was asked about or left out draws no line. */
export function usedReadings(readings: readonly KilnReading[]): Placed[] {
  return readings
    .flatMap((reading) => (reading.elapsed_h !== null && (reading.use === "taken" || reading.use === "over_top") ? [{ reading, hours: reading.elapsed_h }] : []))
    .sort((one, other) => one.hours - other.hours);
}

/** Reading less set point; where none was written, less the programme at that hour. Null where neither says. */
export function gapOf({ reading_c, set_c, elapsed_h }: KilnReading, curve: Log["curve"]): number | null {
  if (set_c !== null) return reading_c - set_c;
  if (elapsed_h === null) return null;
  const planned = valueAt(curve.map((corner) => corner.elapsed_h), curve.map((corner) => corner.planned_c), elapsed_h);
  return planned === null ? null : reading_c - planned;
}

/** The stretches between the times at which it went out or was lit again. */
export function stretches(placed: readonly Placed[], events: Log["events"]): Placed[][] {
  const breaks = events.filter(({ kind, is_taken_back }) => !is_taken_back && (kind === "stopped" || kind === "resumed")).map(({ happened_at }) => Date.parse(happened_at));
  const byStretch = new Map<number, Placed[]>();
  for (const one of placed) {
    const stretch = breaks.filter((at) => at < Date.parse(one.reading.taken_at)).length;
    byStretch.set(stretch, [...(byStretch.get(stretch) ?? []), one]);
  }
  return [...byStretch.values()];
}

/** Null while there is neither a reading nor a programme to draw. */
export function drawCurve(log: Log, { width, rem, unit, now }: CurveAround): CurvePicture | null {
  const placed = usedReadings(log.readings);
  const last = Math.max(placed.at(-1)?.hours ?? 0, log.curve.at(-1)?.elapsed_h ?? 0);
  if (last <= 0) return null;
  const top = Math.max(...placed.map((one) => shownDegrees(one.reading.reading_c, unit)), ...log.curve.map((corner) => shownDegrees(corner.planned_c, unit)), 100);
  // The words of a clock change want a line of their own over the plot.
  const head = (log.clock_change === null ? 1.6 : 2.2) * rem;
  const plot = { left: 3.4 * rem, right: width - 8, top: head, bottom: head + PLOT_PX };
  const step = stepOf(top);
  const x: Axis = { from: 0, to: last, start: plot.left, end: plot.right };
  const y: Axis = { from: Math.min(0, ...placed.map((one) => shownDegrees(one.reading.reading_c, unit))), to: top * 1.04, start: plot.bottom, end: plot.top };
  const at = (hours: number, celsius: number): Point => ({ x: placeOn(x, hours), y: placeOn(y, shownDegrees(celsius, unit)) });
  const gapY = plot.bottom + 2.4 * rem;
  const gap = gapStrip(log, placed, { x, y: gapY, unit, rem });
  return {
    width, plot,
    height: Math.round(gap === null ? plot.bottom + 1.75 * rem : gapY + GAP_PX + 1.35 * rem),
    known: stretches(placed, log.events).map((stretch) => linePath(stretch.map((one) => at(one.hours, one.reading.reading_c)))).filter(Boolean),
    programme: linePath(log.curve.map((corner) => at(corner.elapsed_h, corner.planned_c))),
    squares: placed.map((one) => at(one.hours, one.reading.reading_c)),
    hours: hourMarks(last, plot.right - plot.left, rem).map((hours) => ({ x: placeOn(x, hours), words: `${String(hours)}\u202fh` })),
    grid: Array.from({ length: Math.floor(top / step) + 1 }, (_, place) => place * step).map((value) => ({ y: placeOn(y, value), words: String(value) })),
    unit: unit === "c" ? "°C" : "°F",
    clockChange: changeOf(log, x),
    nowX: nowOf(log, x, now),
    gap,
  };
}

/** Two or three lines of the grid. */
function stepOf(top: number): number {
  return [50, 100, 200, 250, 500, 1000].find((step) => top / step <= 3.2) ?? 1000;
}

function hourMarks(last: number, room: number, rem: number): number[] {
  const most = Math.max(2, Math.floor(room / (3.4 * rem)));
  const step = HOUR_STEPS.find((hours) => last / hours <= most) ?? Math.ceil(last / most);
  return Array.from({ length: Math.floor(last / step) + 1 }, (_, place) => place * step);
}

/** The instant on the hour axis: hours that really passed since it was lit. */
function hoursAt(iso: string, log: Log): number | null {
  return log.times.started_at === null ? null : (Date.parse(iso) - Date.parse(log.times.started_at)) / HOUR_MS;
}

function changeOf(log: Log, x: Axis): CurvePicture["clockChange"] {
  if (log.clock_change === null) return null;
  const hours = hoursAt(log.clock_change.at, log);
  if (hours === null || hours < 0 || hours > x.to) return null;
  return { x: placeOn(x, hours), words: log.clock_change.words, anchor: hours > x.to / 2 ? "end" : "start" };
}

function nowOf(log: Log, x: Axis, now: Date): number | null {
  if (log.state !== "firing" && log.state !== "stopped") return null;
  const hours = hoursAt(now.toISOString(), log);
  return hours === null || hours > x.to ? null : placeOn(x, Math.max(0, hours));
}

function gapStrip(log: Log, placed: readonly Placed[], { x, y, unit, rem }: { x: Axis; y: number; unit: Degrees; rem: number }): CurvePicture["gap"] {
  const gaps = placed.flatMap(({ reading, hours }) => {
    const gap = gapOf(reading, log.curve);
    return gap === null ? [] : [{ id: reading.id, hours, gap }];
  });
  const most = Math.max(0, ...gaps.map(({ gap }) => Math.abs(gap)));
  if (most === 0) return null;
  const bars = gaps.map(({ hours, gap }) => {
    const height = Math.round((Math.abs(gap) / most) * GAP_PX * 10) / 10;
    return { x: placeOn(x, hours) - BAR_PX / 2, y: gap < 0 ? y : y - height / 2, width: BAR_PX, height: gap < 0 ? height : height / 2 };
  });
  const worst = log.worst_gap && gaps.find(({ id }) => id === log.worst_gap?.reading_id);
  if (!worst) return { y, bars, worst: null };
  const figure = Math.round(Math.abs(worst.gap) * (unit === "c" ? 1 : F_PER_C));
  const at = placeOn(x, worst.hours);
  const anchor = at < x.start + 4 * rem ? "start" : at > x.end - 4 * rem ? "end" : "middle";
  return { y, bars, worst: { x: at, y: y + GAP_PX + 1.1 * rem, words: `${String(figure)} ${worst.gap < 0 ? "under" : "over"}`, anchor } };
}

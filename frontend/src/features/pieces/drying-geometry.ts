/** Where everything of the drying curve stands, in pixels of its own box. Pure; the picture is drawn elsewhere. */
import type { DryingAnswer } from "../../api/shapes-pieces";
import { bandPath, daysOf, linePath, namedDays, placeOn, valueAt } from "../../domain/plot";
import type { Axis, Point } from "../../domain/plot";

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
/** Of the past, at most so much: what is coming is what one looks for. */
const PAST_MS = 4 * DAY_MS;
const LEAST_AHEAD_MS = DAY_MS;
/** The height of the plot itself, whatever the size of the text. [px] */
export const PLOT_PX = 132;

export interface Seen extends Point {
  kind: "weighing" | "check";
}

export interface DryingPicture {
  width: number;
  height: number;
  plot: { left: number; right: number; top: number; bottom: number };
  /** What happened, up to now. */
  known: string;
  /** The middle guess, from now on. */
  middle: string;
  /** The likely range, 80 %. */
  band: string;
  edges: [string, string];
  /** Days on which it is likely dry; the tick is the middle guess. */
  dry: { left: number; right: number; tick: number | null } | null;
  /** Times under a cover, above the plot: a lid. */
  covers: { left: number; right: number }[];
  /** Leather-hard for joining, by the middle guess. */
  join: { left: number; right: number } | null;
  nowX: number;
  seen: Seen[];
  days: { x: number; tickX: number; words: string; isToday: boolean }[];
  dayTicks: number[];
  grid: { y: number; words: string }[];
}

interface Around {
  width: number;
  rem: number;
  now: Date;
  zone: string;
}

const ms = (iso: string | null | undefined): number | null => (iso ? Date.parse(iso) : null);

/** From where to where it is worth drawing. */
function spanOf({ curve, windows }: DryingAnswer, now: Date): { from: number; to: number } | null {
  const times = curve?.t_at.map(Date.parse) ?? [];
  const [first, last] = [times[0], times.at(-1)];
  if (first === undefined || last === undefined) return null;
  const { p50, p90 } = windows?.bisque ?? { p50: null, p90: null };
  const dry = ms(p90) ?? ms(p50);
  const from = Math.max(first, now.getTime() - PAST_MS);
  const wanted = dry === null ? last : dry + 0.12 * (dry - from);
  return { from: Math.min(from, now.getTime()), to: Math.max(now.getTime() + LEAST_AHEAD_MS, Math.min(last, wanted)) };
}

/** Points of one line between two instants, cut exactly at both. */
function pointsOf(times: readonly number[], values: readonly number[], from: number, to: number, x: Axis, y: Axis): Point[] {
  const inner = times.flatMap((time, place) => (time > from && time < to ? [{ time, value: values[place] ?? 0 }] : []));
  const ends = [from, to].map((time) => ({ time, value: valueAt(times, values, time) }));
  const all = [ends[0], ...inner, ends[1]];
  return all.flatMap((one) => (one && one.value !== null ? [{ x: placeOn(x, one.time), y: placeOn(y, one.value) }] : []));
}

/** Null while nothing has been reckoned. */
export function drawDrying(drying: DryingAnswer, { width, rem, now, zone }: Around): DryingPicture | null {
  const span = spanOf(drying, now);
  const { curve } = drying;
  if (span === null || curve === null) return null;
  const plot = { left: 3.4 * rem, right: width - 4, top: 2.4 * rem, bottom: 2.4 * rem + PLOT_PX };
  const x: Axis = { ...span, start: plot.left, end: plot.right };
  const y: Axis = { from: 0, to: 1, start: plot.bottom, end: plot.top };
  const times = curve.t_at.map(Date.parse);
  const at = now.getTime();
  // The past ends now; where the curve does not reach so far, at its end.
  const turn = Math.min(at, times.at(-1) ?? at);
  const upper = pointsOf(times, curve.p90, turn, span.to, x, y);
  const lower = pointsOf(times, curve.p10, turn, span.to, x, y);
  const days = daysOf(new Date(span.from), new Date(span.to), now, zone);
  const isIn = (time: number): boolean => time >= span.from && time <= span.to;
  const most = Math.max(2, Math.floor((plot.right - plot.left) / (3.2 * rem)));
  return {
    width,
    height: Math.round(plot.bottom + 1.75 * rem),
    plot,
    known: linePath(pointsOf(times, curve.p50, span.from, turn, x, y)),
    middle: linePath(pointsOf(times, curve.p50, turn, span.to, x, y)),
    band: bandPath(upper, lower),
    edges: [linePath(upper), linePath(lower)],
    dry: dryDays(drying, x, at),
    covers: coveredTimes(drying.evidence, span.to, at).flatMap((one) => within(one, x)),
    join: joinTimes(drying, x),
    nowX: placeOn(x, at),
    seen: seenOf(drying, times, x, y, isIn),
    days: namedDays(days, most)
      .filter(({ mark }) => isIn(mark.middle.getTime()))
      .map(({ mark, words }) => ({ x: placeOn(x, mark.middle.getTime()), tickX: placeOn(x, mark.from.getTime()), words, isToday: mark.isToday })),
    dayTicks: days.map((mark) => mark.from.getTime()).filter(isIn).map((time) => placeOn(x, time)),
    grid: [1, 0.5, 0].map((value) => ({ y: placeOn(y, value), words: `${String(value * 100)}\u202f%` })),
  };
}

/** What is coming of the likely days: they never begin in the past. */
function dryDays({ windows }: DryingAnswer, x: Axis, now: number): DryingPicture["dry"] {
  const { p10, p50, p90 } = windows?.bisque ?? { p10: null, p50: null, p90: null };
  const [first, last] = [ms(p10), ms(p90)];
  if (first === null || first >= x.to || (last !== null && last <= now)) return null;
  const clip = (time: number): number => placeOn(x, Math.min(x.to, Math.max(now, time)));
  const middle = ms(p50);
  return { left: clip(first), right: clip(last ?? x.to), tick: middle !== null && middle > now && middle < x.to ? placeOn(x, middle) : null };
}

/** From when to when it stood under a cover; what is covered now stays so until somebody opens it. */
export function coveredTimes(evidence: DryingAnswer["evidence"], end: number, now: number): { from: number; to: number }[] {
  const changes = evidence.filter(({ kind }) => kind === "cover").map(({ at, words }) => ({ time: Date.parse(at), isOpen: words === "open" }));
  const found: { from: number; to: number }[] = [];
  let since: number | null = null;
  for (const { time, isOpen } of changes) {
    if (isOpen && since !== null) found.push({ from: since, to: time });
    since = isOpen ? null : since ?? time;
  }
  if (since !== null) found.push({ from: since, to: Math.min(end, now) });
  return found;
}

function within({ from, to }: { from: number; to: number }, x: Axis): { left: number; right: number }[] {
  const [first, last] = [Math.max(from, x.from), Math.min(to, x.to)];
  return last > first ? [{ left: placeOn(x, first), right: placeOn(x, last) }] : [];
}

function joinTimes({ windows }: DryingAnswer, x: Axis): DryingPicture["join"] {
  const [opens, closes] = [ms(windows?.join.opens?.p50), ms(windows?.join.closes?.p50)];
  if (opens === null) return null;
  return within({ from: opens, to: closes ?? x.to }, x)[0] ?? null;
}

/** Touch stands on the middle line, a weighing where the scale says, which may be beside it. */
function seenOf(drying: DryingAnswer, times: readonly number[], x: Axis, y: Axis, isIn: (time: number) => boolean): Seen[] {
  const { curve, evidence } = drying;
  return evidence.flatMap(({ kind, at, water_left }) => {
    const time = Date.parse(at);
    if ((kind !== "weighing" && kind !== "check") || !isIn(time)) return [];
    const left = water_left ?? valueAt(times, curve?.p50 ?? [], time);
    return left === null ? [] : [{ kind, x: placeOn(x, time), y: placeOn(y, Math.min(1, Math.max(0, left))) }];
  });
}

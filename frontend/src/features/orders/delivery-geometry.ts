/** Where everything of the delivery drawing stands: the likely days as a box, the promise as a flag. Pure. */
import { wallTime } from "../../domain/clock";
import { placeOn } from "../../domain/plot";
import type { Axis } from "../../domain/plot";
import { noonOf } from "../../domain/wall";
import { marksFrom, stepFor } from "./time-marks";

const DAY_MS = 86_400_000;
const ROOM_AFTER_DAYS = 6;
const LEAST_DAYS = 14;
/** A label of `n` letters takes about so much of the text size each. */
const LETTER = 0.46;

export interface Delivery {
  promised: string | null;
  likelyFrom: string | null;
  likelyMiddle: string | null;
  likelyUntil: string | null;
}

export interface Label {
  x: number;
  y: number;
  words: string;
  anchor: "start" | "middle" | "end";
}

export interface DeliveryPicture {
  width: number;
  height: number;
  baseY: number;
  left: number;
  right: number;
  box: { left: number; right: number; tick: number | null; label: Label } | null;
  flag: { x: number; label: Label } | null;
  ticks: { x: number; label: Label }[];
}

interface Around {
  width: number;
  rem: number;
  now: Date;
  zone: string;
}

/** Null when there is neither a promise nor a guess to show. */
export function drawDelivery(delivery: Delivery, { width, rem, now, zone }: Around): DeliveryPicture | null {
  const [promised, first, middle, last] = [delivery.promised, delivery.likelyFrom, delivery.likelyMiddle, delivery.likelyUntil].map((day) => noonOf(day, zone));
  const days = [promised, first, last].flatMap((at) => (at ? [at.getTime()] : []));
  if (days.length === 0) return null;
  const from = Math.min(now.getTime(), ...days);
  const to = Math.max(from + LEAST_DAYS * DAY_MS, Math.max(...days) + ROOM_AFTER_DAYS * DAY_MS);
  const px = Math.max(14, 0.875 * rem);
  const baseY = 3.4 * px;
  const axis: Axis = { from, to, start: 8, end: width - 8 };
  const box = first && last ? boxOf(axis, { first, middle: middle ?? null, last, hasFlag: sameMonth(last, promised, zone) }, px, zone) : null;
  const flag = promised ? flagOf(axis, promised, px, zone) : null;
  if (box && flag && overlaps(box.label, flag.label, px)) box.label.y = flag.label.y - 1.15 * px;
  const rise = Math.max(0, 0.9 * px - Math.min(...[box?.label.y, flag?.label.y].filter((y) => y !== undefined)));
  return lowered({ width, height: Math.round(baseY + 1.9 * px), baseY, left: 8, right: width - 8, box, flag, ticks: ticksOf(axis, px, baseY, zone) }, rise);
}

function boxOf(axis: Axis, { first, middle, last, hasFlag }: { first: Date; middle: Date | null; last: Date; hasFlag: boolean }, px: number, zone: string): NonNullable<DeliveryPicture["box"]> {
  // The box holds the whole of its first and last day.
  const left = placeOn(axis, first.getTime() - DAY_MS / 2);
  const right = placeOn(axis, last.getTime() + DAY_MS / 2);
  const words = `likely ${shortRange(first, last, zone, hasFlag)}`;
  return { left, right: Math.max(right, left + 4), tick: middle && placeOn(axis, middle.getTime()), label: { ...fitted(axis, (left + right) / 2, words, px), y: 1.85 * px } };
}

function flagOf(axis: Axis, promised: Date, px: number, zone: string): NonNullable<DeliveryPicture["flag"]> {
  const x = placeOn(axis, promised.getTime());
  const { day, monthName } = wallTime(promised, zone);
  return { x, label: { ...fitted(axis, x + 4, `${String(day)} ${monthName}`, px), y: 1.4 * px } };
}

function sameMonth(one: Date, other: Date | null | undefined, zone: string): boolean {
  if (!other) return false;
  const [first, second] = [wallTime(one, zone), wallTime(other, zone)];
  return first.month === second.month && first.year === second.year;
}

/** `4–12 Dec`, or `28 Nov–3 Dec`; without the month where the flag beside it says the same. */
export function shortRange(first: Date, last: Date, zone: string, isNamedBeside = false): string {
  const [one, other] = [wallTime(first, zone), wallTime(last, zone)];
  if (one.month === other.month && isNamedBeside) return one.day === other.day ? String(one.day) : `${String(one.day)}–${String(other.day)}`;
  if (one.month !== other.month) return `${String(one.day)} ${one.monthName}–${String(other.day)} ${other.monthName}`;
  return one.day === other.day ? `${String(one.day)} ${one.monthName}` : `${String(one.day)}–${String(other.day)} ${one.monthName}`;
}

/** A label that stays within the drawing. */
function fitted(axis: Axis, x: number, words: string, px: number): Label {
  const half = (words.length * LETTER * px) / 2;
  if (x - half < 0) return { x: 0, y: 0, words, anchor: "start" };
  return x + half > axis.end + 8 ? { x: axis.end + 8, y: 0, words, anchor: "end" } : { x, y: 0, words, anchor: "middle" };
}

function extent({ x, words, anchor }: Label, px: number): [number, number] {
  const long = words.length * LETTER * px;
  const from = anchor === "start" ? x : anchor === "end" ? x - long : x - long / 2;
  return [from, from + long];
}

function overlaps(one: Label, other: Label, px: number): boolean {
  const [[from, to], [start, end]] = [extent(one, px), extent(other, px)];
  return from < end + px / 3 && start < to + px / 3;
}

function ticksOf(axis: Axis, px: number, baseY: number, zone: string): DeliveryPicture["ticks"] {
  const most = Math.max(2, Math.floor((axis.end - axis.start) / (3.6 * px)));
  const [from, to] = [new Date(axis.from), new Date(axis.to)];
  const marks = marksFrom(from, to, stepFor(from, to, most, 7), zone);
  return marks.map(({ at, words }) => {
    const x = placeOn(axis, Math.max(axis.from, at.getTime()));
    return { x, label: { ...fitted(axis, x, words, px), y: baseY + 1.55 * px } };
  });
}

/** Room above for a label that had to move up. */
function lowered(picture: DeliveryPicture, by: number): DeliveryPicture {
  const down = (label: Label): Label => ({ ...label, y: label.y + by });
  return {
    ...picture,
    height: Math.round(picture.height + by),
    baseY: picture.baseY + by,
    box: picture.box && { ...picture.box, label: down(picture.box.label) },
    flag: picture.flag && { ...picture.flag, label: down(picture.flag.label) },
    ticks: picture.ticks.map((tick) => ({ ...tick, label: down(tick.label) })),
  };
}

/** What is typed on the number pad: figures in the person's own degrees, and whether they can be a kiln's. */
import type { Units } from "../../domain/format";
import { THIN } from "../../domain/format";
import type { Key } from "../../ui/number-pad";

/** Longest that makes sense: `1222.5`. */
const MOST_LETTERS = 6;
/** Beyond this over its top, no kiln reads so; the studio's own gate has the last word. [°C] */
const OVER_TOP_C = 100;

export function pressed(typed: string, key: Key): string {
  if (key === "wipe") return "";
  if (key === "back") return typed.slice(0, -1);
  const next = typed === "0" ? key : `${typed}${key}`;
  return next.length > MOST_LETTERS ? typed : next;
}

/** The figure, null when it is none: an empty field, a word. A comma is a point here. */
export function figureOf(typed: string): number | null {
  const words = typed.trim().replace(",", ".").replace("\u2212", "-");
  if (!/^-?\d+(?:\.\d+)?$/.test(words)) return null;
  return Number(words);
}

export function toCelsius(figure: number, unit: Units["temperature"]): number {
  return unit === "c" ? figure : (figure - 32) / 1.8;
}

/** As the server reads it: a plain number in °C, else the words with their unit. */
export function sentFigure(figure: number, unit: Units["temperature"]): number | string {
  return unit === "c" ? figure : `${String(figure)} °F`;
}

export interface Odd {
  why: string;
  /** What it would be, were the display in the other degrees; only where that is a kiln's. */
  instead: { celsius: number; words: string } | null;
}

/** A question before it is kept, where the figure is over what this kiln may reach. Null: nothing to ask. */
export function oddReading(celsius: number, topC: number | null, unit: Units["temperature"]): Odd | null {
  if (topC === null || celsius <= topC + OVER_TOP_C) return null;
  const why = `That is far over the ${shown(topC, unit)} this kiln may reach.`;
  const meant = unit === "c" ? (celsius - 32) / 1.8 : null;
  if (meant === null || meant > topC) return { why, instead: null };
  return { why, instead: { celsius: Math.round(meant * 10) / 10, words: `${String(Math.round(celsius))}${THIN}°F, which is ${shown(meant, "c")}` } };
}

function shown(celsius: number, unit: Units["temperature"]): string {
  return unit === "c" ? `${String(Math.round(celsius))}${THIN}°C` : `${String(Math.round(celsius * 1.8 + 32))}${THIN}°F`;
}

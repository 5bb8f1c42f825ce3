/** Words and numbers as the studio says them: spans, coming times, quantities, chances. */
import { clock, date, dateRange, daysBetween, wallTime } from "./clock";

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
/** Narrow and non-breaking: a figure never parts from its unit at the end of a line. */
export const THIN = "\u202f";
const MINUS = "\u2212";

export interface Units {
  length: "mm" | "in";
  mass: "g" | "lb";
  temperature: "c" | "f";
}

/** Facts of one line; more than three is a paragraph, so the rest is left to the piece's own screen. */
export function joinFacts(...facts: (string | null | undefined | false)[]): string {
  return facts.filter((fact): fact is string => Boolean(fact)).slice(0, 3).join(" · ");
}

/** `16½`: halves set as one glyph; 0.5 alone is `½`. */
export function halves(count: number): string {
  const doubled = Math.round(count * 2);
  const whole = Math.trunc(doubled / 2);
  if (doubled % 2 === 0) return String(whole);
  return `${whole === 0 ? "" : String(whole)}½`;
}

/** Time gone by: `40 min`, half-hours to 48 h, then whole days. */
export function span(from: Date, to: Date): string {
  const gone = Math.max(0, to.getTime() - from.getTime());
  const minutes = Math.round(gone / MINUTE_MS);
  if (minutes < 1) return "just now";
  if (minutes < 60) return `${String(minutes)}${THIN}min`;
  const hours = gone / HOUR_MS;
  return hours < 48 ? `${halves(hours)}${THIN}h` : `${String(Math.floor(hours / 24))}${THIN}d`;
}

function toNearest(at: Date, minutes: number): Date {
  return new Date(Math.round(at.getTime() / (minutes * MINUTE_MS)) * minutes * MINUTE_MS);
}

/** `about 10:00` to ten minutes; `about 11` when it is only known to the hour; a day when it is not today. */
export function about(at: Date, now: Date, zone: string, isCoarse = false): string {
  if (daysBetween(now, at, zone) !== 0) return `about ${date(at, now, zone)}`;
  if (!isCoarse) return `about ${clock(toNearest(at, 10), zone)}`;
  return `about ${String(wallTime(toNearest(at, 60), zone).hour)}`;
}

/** `14:00` today, `Sun 1` on another day. */
export function clockOrDay(at: Date, now: Date, zone: string): string {
  return daysBetween(now, at, zone) === 0 ? clock(toNearest(at, 10), zone) : date(at, now, zone);
}

/** `from about 10:00`, or `from Mon 2` when the day is not today. */
export function fromAbout(at: Date, now: Date, zone: string, isCoarse = false): string {
  return daysBetween(now, at, zone) === 0
    ? `from ${about(at, now, zone, isCoarse)}`
    : `from ${date(at, now, zone)}`;
}

/** The days between which something is likely: `Mon 2 to Wed 4 Nov`; within today, the two times. */
export function likelyRange(from: Date, to: Date, now: Date, zone: string): string {
  if (daysBetween(now, to, zone) !== 0 || daysBetween(from, to, zone) !== 0) return dateRange(from, to, zone);
  return `${clock(toNearest(from, 10), zone)} to ${clock(toNearest(to, 10), zone)}`;
}

export function upperFirst(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** `1 press`, `3 presses`. */
export function count(figure: number, one: string, many: string): string {
  return `${String(figure)} ${figure === 1 ? one : many}`;
}

const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];

/** `second`; from the eleventh on in figures. */
export function ordinal(place: number): string {
  const word = ORDINALS[place - 1];
  if (word) return word;
  const [tens, ones] = [place % 100, place % 10];
  const ending = tens > 10 && tens < 14 ? "th" : (["th", "st", "nd", "rd"][ones] ?? "th");
  return `${String(place)}${ending}`;
}

function figure(value: number, places: number): string {
  const rounded = value.toFixed(places);
  return rounded.startsWith("-") ? `${MINUS}${rounded.slice(1)}` : rounded;
}

/** Grams per avoirdupois ounce, exactly: NIST Handbook 44, Appendix C (lb = 453.592 37 g). */
const OUNCE_G = 453.59237 / 16;

/** `783 g`, `2.4 kg` from ten kilograms, or `1 lb 4 oz`. */
export function mass(mass_g: number, units: Units): string {
  if (units.mass === "g") {
    return mass_g < 10_000 ? `${figure(mass_g, 0)}${THIN}g` : `${figure(mass_g / 1000, 1)}${THIN}kg`;
  }
  const ounces = Math.round(mass_g / OUNCE_G);
  const pounds = Math.floor(ounces / 16);
  const rest = `${String(ounces % 16)}${THIN}oz`;
  return pounds === 0 ? rest : `${String(pounds)}${THIN}lb ${rest}`;
}

/** `118 mm`, or inches to the eighth, set as a plain fraction: `4⅝` has no glyph in the face, so `4 5/8 in`. */
export function length(length_mm: number, units: Units): string {
  if (units.length === "mm") return `${figure(length_mm, length_mm < 10 && length_mm % 1 !== 0 ? 1 : 0)}${THIN}mm`;
  const eighths = Math.round((length_mm / 25.4) * 8);
  const whole = Math.floor(eighths / 8);
  const part = ["", "1/8", "¼", "3/8", "½", "5/8", "¾", "7/8"][eighths % 8] ?? "";
  const joined = part.includes("/") && whole > 0 ? `${String(whole)} ${part}` : `${whole > 0 || part === "" ? String(whole) : ""}${part}`;
  return `${joined}${THIN}in`;
}

/** `1060 °C`, or `1940 °F`. */
export function temperature(temperature_c: number, units: Units): string {
  return units.temperature === "c"
    ? `${figure(temperature_c, 0)}${THIN}°C`
    : `${figure(temperature_c * 1.8 + 32, 0)}${THIN}°F`;
}

/** `6 %` of a fraction 0 to 1. */
export function percent(fraction: number): string {
  return `${figure(fraction * 100, 0)}${THIN}%`;
}

export interface Confidence {
  basis: "guess" | "checks";
  checks: number;
}

/** What a reckoned time rests on. Under eight of the studio's own checks it is a guess and says so. */
export function basis(confidence: Confidence): string {
  return confidence.basis === "guess" || confidence.checks < 8
    ? "studio guess"
    : `from ${String(confidence.checks)} of your checks`;
}

/** A chance in words; a figure only after twenty of the studio's own outcomes, and then in round odds. */
export function chance(fraction: number, ownOutcomes: number): string {
  if (ownOutcomes >= 20) {
    const inFive = Math.round(fraction * 5);
    if (inFive === 0) return "less than 1 in 10";
    return inFive === 5 ? "more than 9 in 10" : `${String(inFive)} in 5 chance`;
  }
  const word = fraction >= 0.9 ? "very likely" : fraction >= 0.5 ? "likely" : "doubtful";
  return `${word} (guess)`;
}

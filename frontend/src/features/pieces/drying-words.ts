/** Drying in words: likely days, what was felt, what was weighed, and the curve as figures. */
import type { Quantiles } from "../../api/shapes";
import type { DryingAnswer, Evidence } from "../../api/shapes-pieces";
import { dayAndClock } from "../../domain/clock";
import { fromAbout, likelyRange, mass, upperFirst } from "../../domain/format";
import type { Units } from "../../domain/format";
import { midnightOf, valueAt } from "../../domain/plot";

const HOUR_MS = 3_600_000;
/** Past this share of the guesses that never get there, no day is named. */
const HARDLY_EVER = 0.5;

export interface DryingFigures {
  seen: Evidence[];
  ahead: { at: Date; low: number; middle: number; high: number }[];
}

/** What was measured or felt, and the water left at 09:00 of each of the next seven days. */
export function figuresOf({ curve, evidence }: DryingAnswer, now: Date, zone: string): DryingFigures {
  const seen = evidence.filter(({ kind }) => kind === "weighing" || kind === "check");
  if (curve === null) return { seen, ahead: [] };
  const times = curve.t_at.map(Date.parse);
  const midnight = midnightOf(now, zone);
  const mornings = Array.from({ length: 8 }, (_, place) => new Date(midnightOf(new Date(midnight.getTime() + (24 * place + 12) * HOUR_MS), zone).getTime() + 9 * HOUR_MS));
  const ahead = [now, ...mornings.filter((at) => at.getTime() > now.getTime() + 2 * HOUR_MS)].flatMap((at) => {
    const [low, middle, high] = [curve.p10, curve.p50, curve.p90].map((values) => valueAt(times, values, at.getTime()));
    return low == null || middle == null || high == null ? [] : [{ at, low: Math.min(low, high), middle, high: Math.max(low, high) }];
  });
  return { seen, ahead };
}

/** `Mon 2 to Wed 4 Nov`, `from Mon 2` where only a beginning is known, or null: then no day is named. */
export function likely(quantiles: Quantiles | null | undefined, now: Date, zone: string): string | null {
  if (!quantiles || quantiles.p_never > HARDLY_EVER) return null;
  const { p10, p90 } = quantiles;
  if (p10 && Date.parse(p10) <= now.getTime() && p90 && Date.parse(p90) <= now.getTime()) return "Likely by now";
  if (p10 && p90) return upperFirst(likelyRange(new Date(Math.max(Date.parse(p10), now.getTime())), new Date(p90), now, zone));
  return p10 ? upperFirst(fromAbout(new Date(p10), now, zone, true)) : null;
}

export interface SaidFact {
  label: string;
  value: string;
  note: string;
}

const FEELS: Record<string, string> = {
  soft: "Soft", leather_hard: "Leather-hard", too_stiff: "Too stiff to join", bone_dry: "Bone dry",
  fine: "Seen, fine",
};

export function feelWords(feel: string): string {
  return FEELS[feel] ?? FEELS[feel.replaceAll(/[ -]/g, "_")] ?? upperFirst(feel);
}

/** The last touch, and the last weight with the one before it. */
export function evidenceFacts(evidence: readonly Evidence[], units: Units, now: Date, zone: string): SaidFact[] {
  const facts: SaidFact[] = [];
  const touch = evidence.filter(({ kind }) => kind === "check").at(-1);
  if (touch) facts.push({ label: "touch", value: feelWords(touch.words ?? ""), note: `${touch.member}, ${dayAndClock(new Date(touch.at), now, zone)}` });
  const [last, before] = evidence.filter(({ mass_g }) => mass_g !== undefined).slice(-2).reverse();
  if (last?.mass_g === undefined) return facts;
  const earlier = before?.mass_g === undefined ? "" : `; ${mass(before.mass_g, units)} ${dayAndClock(new Date(before.at), now, zone)}`;
  facts.push({ label: "weighed", value: mass(last.mass_g, units), note: `${last.member}, ${dayAndClock(new Date(last.at), now, zone)}${earlier}` });
  return facts;
}

/** What two or more weighings say together. */
export function weighedFacts({ weighed }: DryingAnswer): SaidFact[] {
  if (!weighed || weighed.words === "") return [];
  return [{ label: "by weight", value: weighed.is_steady === true ? "Steady" : "Still drying", note: weighed.words }];
}

const ASSUMED: Record<string, string> = {
  air: "the room\u2019s air, as it has no meter",
  air_gap: "air between readings more than 12 hours apart",
  body: "the clay",
  mould_water: "how wet the mould was",
};

/** What was not measured, in words. */
export function assumedWords(assumed: readonly string[]): string {
  return assumed.map((word) => ASSUMED[word] ?? word.replaceAll("_", " ")).join("; ");
}

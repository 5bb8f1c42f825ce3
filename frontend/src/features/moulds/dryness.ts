/** The damp of a mould in words and lengths. */
import type { Dryness } from "../../api/shapes-moulds";
import { count, ordinal } from "../../domain/format";

/** So much of the bar's length is *rest* at the least: the picture's own scale, not a limit of anything. */
const SCALE = 0.35;

export interface DrynessBarData {
  fraction: number | null;
  word: Dryness["word"];
  dryBelow: number;
  usableBelow: number;
}

export interface DrynessBarLengths {
  dry: number;
  usable: number;
  water: number;
  /** Where the figure stands: over the natch, but never outside the bar. */
  label: number;
  /** The middles of dry, usable and rest. */
  words: [number, number, number];
}

export function barOf({ fraction, dryBelow, usableBelow }: DrynessBarData, width: number): DrynessBarLengths {
  const most = Math.min(1, Math.max(SCALE, usableBelow * 1.5, (fraction ?? 0) * 1.1));
  const at = (share: number): number => Math.round(Math.min(1, share / most) * width * 10) / 10;
  const [dry, usable] = [at(dryBelow), at(usableBelow)];
  const water = Math.min(width - 9, Math.max(9, at(fraction ?? 0)));
  return { dry, usable, water, label: Math.min(width - 24, Math.max(24, water)), words: [Math.max(dry / 2, 14), (dry + usable) / 2, (usable + width) / 2] };
}

const WORDS: Record<Dryness["word"], string> = { dry: "Dry", usable: "Usable", rest: "Rest", unknown: "Dryness not known" };

export function drynessWord({ word }: Dryness): string {
  return WORDS[word];
}

/** `third press since dry: slower` for the press that would come next. */
export function nextPressWords({ word, presses_since_dry, basis }: Dryness): string {
  const press = `${ordinal(presses_since_dry + 1)} press since dry`;
  if (word === "usable" || (word === "rest" && basis !== "nothing")) return `${press}: slower`;
  return press;
}

/** What the word rests on. */
export function basisWords({ basis, presses_since_dry }: Dryness): string {
  switch (basis) {
    case "weighed":
      return "by weight";
    case "reckoned":
      return `by weight, with ${count(presses_since_dry, "press", "presses")} reckoned in`;
    case "presses":
      return `only counted: ${count(presses_since_dry, "press", "presses")} since dry`;
    case "nothing":
      return "weigh it once dry, and again when damp";
  }
}

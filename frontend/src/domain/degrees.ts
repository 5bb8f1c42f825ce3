/** A sentence the studio wrote, with its temperatures in the degrees of who reads it. Never for what a person typed: that stays as typed. */
import type { Units } from "./format";
import { THIN } from "./format";

/** A step between two temperatures and a rate have no nought of their own. */
const FIGURE = /(\d+(?:\.\d+)?)[ \u202f]°C( apart| short| an hour|\/h)?/g;

/** A sentence that speaks of °F itself asks which of the two was meant: both stand as they are. */
export function inDegrees(sentence: string, { temperature }: Units): string {
  if (temperature === "c" || sentence.includes("°F")) return sentence;
  return sentence.replace(FIGURE, (_, figure: string, after: string | undefined) => {
    const fahrenheit = Number(figure) * 1.8 + (after === undefined ? 32 : 0);
    return `${String(Math.round(fahrenheit))}${THIN}°F${after ?? ""}`;
  });
}

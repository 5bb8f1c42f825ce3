/** What a person types as a quantity: the server reads it; here it only gets the unit that stands beside the field. */

const PLAIN = /^[+-]?\d+(?:\.\d+)?$/;
const ONLY_FIGURES = /^[\d\s.,/½¼¾+−-]+$/;

/** A plain figure in the server's own unit as a number; else the words as typed, with `unit` where they have none. */
export function quantity(typed: string, unit: string, serverUnit: string): number | string {
  const words = typed.trim().replace("−", "-");
  if (unit === serverUnit && PLAIN.test(words)) return Number(words);
  return ONLY_FIGURES.test(words) && words !== "" ? `${words} ${unit}` : words;
}

/** A kept quantity as the person typed it, to stand in its field again. */
export function asTyped(kept: unknown, unit: string): string {
  if (typeof kept === "number") return String(kept);
  if (typeof kept !== "string") return "";
  return kept.endsWith(` ${unit}`) ? kept.slice(0, -unit.length - 1) : kept;
}

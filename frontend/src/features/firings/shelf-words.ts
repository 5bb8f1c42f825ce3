/** Shelves by their place in the kiln, as one says it standing before it. */
const NAMES: Record<number, readonly string[]> = {
  1: ["The shelf"], 2: ["Lower shelf", "Upper shelf"], 3: ["Bottom shelf", "Middle shelf", "Top shelf"],
};

/** `Upper shelf`; from four shelves on, `Shelf 2 of 4` from below. */
export function levelName(level: number, of: number): string {
  return NAMES[of]?.[level - 1] ?? `Shelf ${String(level)} of ${String(of)}`;
}

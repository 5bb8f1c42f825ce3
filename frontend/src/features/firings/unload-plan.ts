/** Unloading, shelf by shelf: ticked came out as the load did; each that did not is told by itself. */
import type { LoadWhole, Outcome, Placement, Result } from "../../api/shapes-firings";
import { levelOf } from "./load-overlay";
import { levelName } from "./shelf-words";

export interface UnloadShelf {
  key: string;
  name: string;
  rows: Placement[];
}

type Levels = Parameters<typeof levelOf>[1];

/** The shelves from the top one down, which is the order in which a kiln is emptied. */
export function shelvesOf({ placements }: Pick<LoadWhole, "placements">, levels: Levels): UnloadShelf[] {
  const byLevel = new Map<number, Placement[]>();
  for (const row of placements) {
    const level = levelOf(row, levels) ?? 0;
    byLevel.set(level, [...(byLevel.get(level) ?? []), row]);
  }
  return [...byLevel]
    .sort(([one], [other]) => other - one)
    .map(([level, rows]) => ({ key: String(level), name: level === 0 ? "Shelf not said" : levelName(level, Math.max(levels.length, level)), rows }));
}

/** What an unticked piece may have come to instead: never what the load itself did. */
export function othersThan(outcome: Outcome): readonly Result[] {
  return (["fired", "not_fired", "broken", "damp"] as const).filter((result) => result !== outcome);
}

/** Only what differs is sent; the rest came out as the load did. While that is not known, each is told by itself. */
export function resultsOf(outcome: Outcome, told: ReadonlyMap<string, Result>): { placement_id: string; result: Result }[] {
  return [...told].filter(([, result]) => result !== outcome).map(([placement_id, result]) => ({ placement_id, result }));
}

/** Those not told yet, where the load's own outcome leaves it open. */
export function untold(outcome: Outcome, placements: readonly Placement[], told: ReadonlyMap<string, Result>): Placement[] {
  return outcome === "unsure" ? placements.filter(({ id }) => !told.has(id)) : [];
}

/** The ticket of ware that is fired again: what was wrong with it, and what was mended since. */
import type { TicketRow } from "../../api/shapes-firings";
import type { PieceAnswer } from "../../api/shapes-pieces";
import { joinFacts } from "../../domain/format";

export type Fault = Exclude<TicketRow["fault"], "">;
export type Mended = TicketRow["mended"][number];

export const FAULTS: readonly { value: Fault; words: string }[] = [
  { value: "crawled", words: "Crawled" }, { value: "blistered", words: "Blistered" }, { value: "pinholed", words: "Pinholes" },
  { value: "crazed", words: "Crazed" }, { value: "underfired", words: "Under-fired" }, { value: "thin", words: "Glaze too thin" },
  { value: "ran", words: "Ran" }, { value: "colour", words: "Colour not as wanted" }, { value: "other", words: "Something else" },
];

export const MENDED: readonly { value: Mended; words: string }[] = [
  { value: "ground", words: "Ground back" }, { value: "washed", words: "Glaze washed off" }, { value: "filled", words: "Holes filled" },
  { value: "glazed_again", words: "Glazed again" }, { value: "glazed_thicker", words: "Glazed again thickly" }, { value: "nothing", words: "Nothing" },
];

/** What was kept of a ticket that was not taken. */
export function faultOf(kept: unknown): Fault | null {
  return FAULTS.find(({ value }) => value === kept)?.value ?? null;
}

export function mendedOf(kept: unknown): ReadonlySet<Mended> {
  return new Set(Array.isArray(kept) ? MENDED.filter(({ value }) => kept.includes(value)).map(({ value }) => value) : []);
}

/** *Nothing* goes with nothing else. */
export function toggled(chosen: ReadonlySet<Mended>, code: string): ReadonlySet<Mended> {
  const option = MENDED.find(({ value }) => value === code)?.value;
  if (option === undefined) return chosen;
  const next = new Set(chosen);
  if (next.delete(option)) return next;
  if (option === "nothing") return new Set([option]);
  next.delete("nothing");
  return next.add(option);
}

/** Through a glaze firing once or more, as its firings were told. */
export function wasFired({ piece, firings }: Pick<PieceAnswer, "piece" | "firings">): boolean {
  return firings.glaze > 0 || piece.state === "glaze_fired" || piece.state === "checked" || piece.state === "packed";
}

/** `bisque 1 · glaze 1` */
export function firedWords({ firings }: Pick<PieceAnswer, "firings">): string {
  return joinFacts(firings.bisque > 0 && `bisque ${String(firings.bisque)}`, `glaze ${String(Math.max(1, firings.glaze))}`);
}

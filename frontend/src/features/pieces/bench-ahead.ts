/** What is read beforehand for a day at a bench without signal: one's own ware, the moulds to press next, the four places. */
import type { BenchAnswer } from "../../api/shapes";
import type { Ahead } from "../common/use-ahead";

/** A maker's own; the ware of a whole studio would be half a minute of asking. */
const MOST_PIECES = 24;

const LISTS: readonly Ahead[] = [
  { path: "pieces/", isWholeList: true }, { path: "mould-sets/", isWholeList: true }, { path: "kilns/" }, { path: "commissions/" },
  // What a press asks beside its mould.
  { path: "designs/", isWholeList: true }, { path: "slab-blocks/", isWholeList: true }, { path: "places/" }, { path: "settings/" },
];

export function aheadOf(bench: BenchAnswer): Ahead[] {
  const rows = [...bench.look_now, ...bench.later_today, ...bench.join_today, ...bench.later, ...bench.drying, ...bench.ready_for_bisque];
  const pieces = [...new Set(rows.filter((row) => row.mine).map((row) => row.piece.id))].slice(0, MOST_PIECES);
  const moulds = bench.press_next.filter((row) => row.may_press).map((row) => row.set.id);
  return [
    ...pieces.map((id) => ({ path: `pieces/${id}/` })),
    ...moulds.flatMap((id) => [{ path: `mould-sets/${id}/` }, { path: `mould-sets/${id}/readiness/` }]),
    ...LISTS,
  ];
}

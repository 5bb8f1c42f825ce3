/** What the sheets of an order ask about: which pieces can be handed over, put in, or stood together. */
import type { OrderAnswer, OrderLine, OrderPiece } from "../../api/shapes-orders";
import type { PieceBrief } from "../../api/shapes-pieces";
import { aloneIn, hasSets } from "./together";

/** Finished and still here. */
export function isGivable(piece: Pick<OrderPiece, "stage" | "clash_id">): boolean {
  return piece.stage === "finished" && piece.clash_id === null;
}

/** Live pieces that may be put in: none that is in the order already, lost or handed over. By the letters typed. */
export function pickable(all: readonly PieceBrief[], answer: OrderAnswer, letters: string): PieceBrief[] {
  const inside = new Set(answer.lines.flatMap((line) => line.pieces.map((piece) => piece.id)));
  const wanted = letters.trim().toLowerCase();
  const fits = (piece: PieceBrief): boolean => wanted === "" || `${piece.mark} ${piece.noun} ${piece.design_name}`.toLowerCase().includes(wanted);
  return all.filter((piece) => !inside.has(piece.id) && piece.stage !== "lost" && piece.stage !== "delivered" && fits(piece));
}

/** The lines whose sets are more than one piece, those with something alone first. */
export function linesToMatch(answer: OrderAnswer): OrderLine[] {
  return answer.lines.filter(hasSets).sort((one, other) => aloneIn(other).length - aloneIn(one).length);
}

/** What is asked first of a line's pieces: those that stand alone, else every live one. */
export function firstOf(line: OrderLine): OrderPiece[] {
  const alone = aloneIn(line);
  return alone.length > 0 ? alone : line.pieces.filter((piece) => piece.stage !== "lost" && piece.role !== null);
}

/** What stands together: which jar with which lid, and which pieces still stand alone. */
import type { OrderLine, OrderPiece } from "../../api/shapes-orders";

export interface Group {
  key: string;
  pieces: OrderPiece[];
  /** Nothing when it was not measured. */
  gap_mm: number | null;
}

const isLost = (piece: OrderPiece): boolean => piece.stage === "lost";

/** Live pieces matched with each other, through others too, in the order of their marks. */
export function groupsOf({ pieces }: OrderLine): Group[] {
  const groups: Group[] = [];
  const placed = new Set<string>();
  for (const piece of pieces) {
    if (placed.has(piece.id) || piece.partners.length === 0) continue;
    const members = [piece];
    placed.add(piece.id);
    for (const member of members) {
      for (const other of pieces) {
        if (placed.has(other.id) || !member.partners.some((partner) => partner.id === other.id)) continue;
        placed.add(other.id);
        members.push(other);
      }
    }
    const gaps = members.flatMap((member) => member.partners.flatMap((partner) => (partner.seat_gap_mm === null ? [] : [partner.seat_gap_mm])));
    if (members.length > 1) groups.push({ key: members.map((member) => member.id).join(), pieces: members, gap_mm: gaps.length > 0 ? Math.max(...gaps) : null });
  }
  return groups;
}

/** True where a set is more than one piece, so that something has to stand with something. */
export function hasSets({ recipe }: OrderLine): boolean {
  return recipe.reduce((sum, role) => sum + role.count, 0) > 1;
}

/** Live pieces that could stand with another and do not. */
export function aloneIn(line: OrderLine): OrderPiece[] {
  if (!hasSets(line)) return [];
  return line.pieces.filter((piece) => !isLost(piece) && piece.role !== null && piece.partners.length === 0 && piece.state !== "delivered");
}

/** Whom a piece may stand with: a piece of another role, or of its own where a set asks for two. */
export function partnersFor(line: OrderLine, piece: OrderPiece): OrderPiece[] {
  const own = line.recipe.find((role) => role.role === piece.role);
  return line.pieces.filter((other) => {
    if (other.id === piece.id || isLost(other) || other.role === null || piece.partners.some((partner) => partner.id === other.id)) return false;
    return other.role !== piece.role || (own?.count ?? 0) > 1;
  });
}

/** `jar + lid`, `2 brackets`: what one set is. */
export function setWords({ recipe }: OrderLine): string {
  if (recipe.length === 0) return "any piece";
  return recipe.map((role) => (role.count === 1 ? role.role : `${String(role.count)} ${role.role}s`)).join(" + ");
}

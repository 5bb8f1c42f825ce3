/** The acts on an order: where each is posted, what it carries, and what it is called afterwards. */
import type { OrderPiece } from "../../api/shapes-orders";
import { quantity } from "../../domain/typed";
import { length } from "../../domain/format";
import type { Units } from "../../domain/format";
import type { JsonObject } from "../../offline/kept-act";
import type { ScreenAct } from "../common/use-outbox";

export type OrderDraft = Omit<ScreenAct, "basedOn" | "words"> & { said: string };

const because = (reason: string): JsonObject => (reason.trim() === "" ? {} : { reason: reason.trim() });

/** `words` is the day as it is said; null takes the promise back. */
export function promise(orderId: string, day: string | null, words: string, reason: string): OrderDraft {
  const about = { commission_id: orderId, promised_date: day ?? "" };
  const said = day === null ? "No day promised" : `Promised for ${words}`;
  return { path: `commissions/${orderId}/promises/`, fields: { promised_date: day, ...because(reason) }, verb: "promised", about, said };
}

export interface Line {
  id: string;
  what: string;
}

export function assign(orderId: string, pieces: readonly { id: string; mark: string }[], line: Line | null, reason: string): OrderDraft {
  const ids = pieces.map((piece) => piece.id);
  const marks = pieces.map((piece) => piece.mark).join(", ");
  const about = { commission_id: orderId, piece_ids: ids.join(" "), line_id: line?.id ?? "" };
  const said = line ? `${marks} to ${line.what}` : `${marks} out of the order`;
  return { path: "assignments/", fields: { piece_ids: ids, line_id: line?.id ?? null, ...because(reason) }, verb: "assigned", about, said };
}

/** `typed` is the gap of the seat as typed; nothing when it was not measured. */
export function match(orderId: string, [one, other]: readonly [OrderPiece, OrderPiece], typed: string, units: Units): OrderDraft {
  const gap = typed.trim() === "" ? null : quantity(typed, units.length, "mm");
  const seat = gap === null ? "" : `, seat gap ${typeof gap === "number" ? length(gap, units) : gap}`;
  const about = { commission_id: orderId, piece_ids: `${one.id} ${other.id}`, gap_mm: typeof gap === "number" ? String(gap) : "" };
  const fields = { kind: "matched", piece_ids: [one.id, other.id], ...(gap === null ? {} : { seat_gap_mm: gap }) };
  return { path: "matches/", fields, verb: "matched", about, said: `${other.mark} stands with ${one.mark}${seat}` };
}

export function part(orderId: string, one: { id: string; mark: string }, other: { id: string; mark: string }): OrderDraft {
  const about = { commission_id: orderId, piece_ids: `${one.id} ${other.id}` };
  return { path: "matches/", fields: { kind: "parted", piece_ids: [one.id, other.id] }, verb: "parted", about, said: `${other.mark} parted from ${one.mark}` };
}

/** `closes` null: closed once all that was wanted is handed over. */
export function handOver(orderId: string, pieces: readonly OrderPiece[], closes: boolean | null): OrderDraft {
  const ids = pieces.map((piece) => piece.id);
  const about = { commission_id: orderId, piece_ids: ids.join(" "), closes: closes === true ? "yes" : "" };
  const said = pieces.length > 4 ? `${String(pieces.length)} pieces handed over` : `${pieces.map((piece) => piece.mark).join(", ")} handed over`;
  return { path: `commissions/${orderId}/deliveries/`, fields: { piece_ids: ids, closes }, verb: "handed_over", about, said };
}

export const CLOSINGS = {
  closed: { verb: "closed_commission", said: "Order closed" },
  cancelled: { verb: "cancelled_commission", said: "Order cancelled" },
  reopened: { verb: "reopened_commission", said: "Order opened again" },
} as const;

export type Closing = keyof typeof CLOSINGS;

export function close(orderId: string, kind: Closing, reason: string): OrderDraft {
  const { verb, said } = CLOSINGS[kind];
  return { path: `commissions/${orderId}/closings/`, fields: { kind, ...because(reason) }, verb, about: { commission_id: orderId }, said };
}

export function plan(orderId: string, line: Line, sets: number): OrderDraft {
  const about = { commission_id: orderId, line_id: line.id };
  return { path: `lines/${line.id}/plannings/`, fields: { sets }, verb: "planned_sets", about, said: `${String(sets)} more planned: ${line.what}` };
}

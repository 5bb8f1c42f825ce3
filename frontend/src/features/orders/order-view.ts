/** An order as this phone knows it: what the studio last said, with what was done here since laid over it. Counts wait for the studio. */
import type { OrderAnswer, OrderPiece, Partner } from "../../api/shapes-orders";
import { unseenBy } from "../../offline/kept-act";
import type { KeptAct } from "../../offline/kept-act";

export interface KeptTelling {
  id: string;
  words: string;
  at: Date;
  isKept: boolean;
}

export interface OrderView {
  answer: OrderAnswer;
  /** Newest first. */
  kept: KeptTelling[];
}

function happenedAt(act: KeptAct): string {
  const at = act.body["happened_at"];
  return typeof at === "string" ? at : act.made_at;
}

const idsOf = (act: KeptAct): string[] => (act.about["piece_ids"] ?? "").split(" ").filter((id) => id !== "");

function withOrder(answer: OrderAnswer, change: Partial<OrderAnswer["commission"]>): OrderAnswer {
  return { ...answer, commission: { ...answer.commission, ...change } };
}

function withPieces(answer: OrderAnswer, change: (piece: OrderPiece) => OrderPiece): OrderAnswer {
  return { ...answer, lines: answer.lines.map((line) => ({ ...line, pieces: line.pieces.map(change) })) };
}

/** Pieces this order shows change their line; what comes from elsewhere stands here once the studio has heard it. */
function assigned(answer: OrderAnswer, act: KeptAct): OrderAnswer {
  const ids = idsOf(act);
  const moved = answer.lines.flatMap((line) => line.pieces).filter((piece) => ids.includes(piece.id));
  return {
    ...answer,
    lines: answer.lines.map((line) => {
      const staying = line.pieces.filter((piece) => !ids.includes(piece.id));
      return { ...line, pieces: line.id === act.about["line_id"] ? [...staying, ...moved] : staying };
    }),
  };
}

function matched(answer: OrderAnswer, act: KeptAct, isMatched: boolean): OrderAnswer {
  const ids = idsOf(act);
  const pieces = answer.lines.flatMap((line) => line.pieces);
  const gap = Number(act.about["gap_mm"] ?? "");
  return withPieces(answer, (piece) => {
    if (!ids.includes(piece.id)) return piece;
    const others = piece.partners.filter((partner) => !ids.includes(partner.id));
    const added = pieces
      .filter((other) => isMatched && other.id !== piece.id && ids.includes(other.id))
      .map((other): Partner => ({ id: other.id, mark: other.mark, seat_gap_mm: act.about["gap_mm"] ? gap : null }));
    return { ...piece, partners: [...others, ...added] };
  });
}

function handedOver(answer: OrderAnswer, act: KeptAct): OrderAnswer {
  const ids = idsOf(act);
  const given = withPieces(answer, (piece) => (ids.includes(piece.id) ? { ...piece, stage: "delivered", state: "delivered", state_words: "delivered", since_at: happenedAt(act) } : piece));
  return act.about["closes"] ? withOrder(given, { state: "closed", closed_at: happenedAt(act) }) : given;
}

function after(answer: OrderAnswer, act: KeptAct): OrderAnswer {
  switch (act.verb) {
    case "promised":
      return withOrder(answer, { promised_date: act.about["promised_date"] || null });
    case "assigned":
      return assigned(answer, act);
    case "matched":
    case "parted":
      return matched(answer, act, act.verb === "matched");
    case "handed_over":
      return handedOver(answer, act);
    case "closed_commission":
      return withOrder(answer, { state: "closed", closed_at: happenedAt(act) });
    case "cancelled_commission":
      return withOrder(answer, { state: "cancelled", cancelled_at: happenedAt(act) });
    case "reopened_commission":
      return withOrder(answer, { state: "open", closed_at: null, cancelled_at: null });
    default:
      return answer;
  }
}

/** Acts of this order that the answer cannot show yet, and those about its pieces. */
export function orderView(snapshot: OrderAnswer, acts: readonly KeptAct[]): OrderView {
  const pieces = new Set(snapshot.lines.flatMap((line) => line.pieces.map((piece) => piece.id)));
  const isOurs = (act: KeptAct): boolean => act.about["commission_id"] === snapshot.commission.id || pieces.has(act.about["piece_id"] ?? "");
  const mine = unseenBy(snapshot.journal_seq, acts).filter(isOurs);
  const kept = mine.map((act) => ({ id: act.id, words: act.words, at: new Date(happenedAt(act)), isKept: act.state === "waiting" }));
  return { answer: mine.reduce(after, snapshot), kept: kept.reverse() };
}

/** One order as the studio answers it, for the tests of this folder. */
import type { LivesAnswer, OrderAnswer, OrderCounts, OrderPiece, OrderRow, OrderTold, Outlook } from "../../api/shapes-orders";

const odile = { id: "odile", first_name: "Odile", initials: "OF" };
const counts: OrderCounts = {
  wanted: 2, delivered: 0, finished: 0, alive: 4, planned: 0, in_doubt: 0, pieces: 5, lost_pieces: 1, damaged_pieces: 0, outside_pieces: 0,
};

export function orderRow(change: Partial<OrderRow> = {}): OrderRow {
  return {
    id: "c102", number: "C-102", client_name: "Dr E. Wainfleet", what: "ribbed sauce boats", use: "food", maker: odile, mine: true,
    promised_date: "2026-12-18", days_left: 48, promise_words: "promised for 18 Dec 2026, in 48 days", state: "open", counts,
    words: "2 wanted: 1 bisqued, 3 on the way, 1 lost", is_at_risk: false, risk_words: "", likely_from: "2026-12-04", likely_until: "2026-12-12",
    judged_at: "2026-10-31T08:00:00Z", ...change,
  };
}

export function orderPiece(mark: string, state: string, change: Partial<OrderPiece> = {}): OrderPiece {
  return {
    id: mark.toLowerCase(), mark, noun: "sauce boat", design_name: "ribbed sauce boat", stage: "drying", state, state_words: state,
    design_id: "d1", place: null, maker: odile, mine: true, since_at: "2026-10-22T10:05:00Z", touched_at: "2026-10-22T10:05:00Z",
    cover: "", clash_id: null, is_damaged: false, missing_roles: [], use: "food", grade: "", role: "sauce boat", set: null, partners: [], words: "",
    ...change,
  };
}

export function orderAnswer(): OrderAnswer {
  const { is_at_risk, ...row } = orderRow();
  return {
    at: "2026-10-31T09:00:00Z", journal_seq: 100,
    commission: { ...row, is_at_risk, taken_at: "2026-09-20T10:00:00Z", closed_at: null, cancelled_at: null, revision: 1, may: { change: true, plan: true, lift_display: true } },
    lines: [{
      id: "l1", what: "sauce boats", wanted_sets: 2, order: 0, counts, sentence: "2 wanted: 1 bisqued, 3 on the way, 1 lost",
      recipe: [], stages: [{ stage: "bisque", state: "bisqued", words: "bisqued", count: 1 }],
      pieces: [orderPiece("S02", "bisqued"), orderPiece("S03", "drying", { cover: "tucked" }), orderPiece("S04", "in_mould")],
    }],
    reports: [], cautions: [], warnings: [],
  };
}

export function outlookLine(): Outlook {
  return {
    line_id: "l1", what: "sauce boats", wanted_sets: 2, still_needed: 2, is_all_there: false, chance_words: "likely enough by 18 Dec 2026", chance: null,
    press: { more: 0, by_role: [], words: "" }, latest_press: [], likely_from: "2026-12-04", likely_until: "2026-12-12", risks: [],
  };
}

const span = (state: string, from_at: string, until_at: string | null, cover = ""): LivesAnswer["pieces"][number]["spans"][number] =>
  ({ stage: state === "scrapped" ? "lost" : "drying", state, cover, from_at, until_at });

export function livesAnswer(): LivesAnswer {
  return {
    at: "2026-10-31T09:00:00Z", journal_seq: 100,
    pieces: [
      { id: "s01", mark: "S01", line_id: "l1", spans: [
        span("in_mould", "2026-10-05T15:00:00Z", "2026-10-06T15:00:00Z"), span("out", "2026-10-06T15:00:00Z", "2026-10-07T09:00:00Z"),
        span("drying", "2026-10-07T09:00:00Z", "2026-10-18T07:40:00Z", "tucked"), span("scrapped", "2026-10-18T07:40:00Z", null),
      ] },
      { id: "s02", mark: "S02", line_id: "l1", spans: [
        span("in_mould", "2026-10-06T15:00:00Z", "2026-10-07T10:00:00Z"), span("joined", "2026-10-07T10:00:00Z", "2026-10-08T10:00:00Z"),
        span("drying", "2026-10-08T10:00:00Z", "2026-10-14T10:00:00Z", "loose"), span("drying", "2026-10-14T10:00:00Z", "2026-10-18T10:00:00Z", "open"),
        span("bone_dry", "2026-10-18T10:00:00Z", "2026-10-20T18:00:00Z"), span("in_bisque", "2026-10-20T18:00:00Z", "2026-10-22T09:05:00Z"),
        span("bisqued", "2026-10-22T09:05:00Z", null),
      ] },
      { id: "s04", mark: "S04", line_id: "l1", spans: [span("in_mould", "2026-10-31T07:40:00Z", null)] },
    ],
  };
}

export function told(id: string, happened_at: string, change: Partial<OrderTold> = {}): OrderTold {
  return {
    id, seq: 1, verb: "came_to", kind: "making", words: "", lines: [{ words: "joined", marks: ["S05"], piece_ids: ["s05"] }],
    happened_at, written_at: happened_at, is_late: false, member: odile, device: "phone", note: null, has_hidden_note: false, photo_ids: [], has_hidden_photos: false, corrects: null,
    is_taken_back: false, taken_back_by: null, taken_back_at: null, came_from_other_order: false, ...change,
  };
}

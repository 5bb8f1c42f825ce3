/** What orders, their history, what stands together, and found ware answer. */
import type { PersonRef, PlaceRef, Snapshot } from "./shapes";
import type { Caution, PieceBrief, Spot } from "./shapes-pieces";

export type Use = "food" | "display";

/** Sets, but what ends in `pieces`. Finished sets are among those alive, delivered ones too; planned and in doubt are not. */
export interface OrderCounts {
  wanted: number;
  delivered: number;
  finished: number;
  alive: number;
  planned: number;
  in_doubt: number;
  pieces: number;
  lost_pieces: number;
  damaged_pieces: number;
  outside_pieces: number;
}

export interface OrderRow {
  id: string;
  number: string;
  client_name: string;
  what: string;
  use: Use;
  maker: PersonRef;
  mine: boolean;
  promised_date: string | null;
  days_left: number | null;
  promise_words: string;
  state: "open" | "closed" | "cancelled";
  counts: OrderCounts;
  words: string;
  is_at_risk: boolean;
  risk_words: string;
  likely_from: string | null;
  likely_until: string | null;
  judged_at: string | null;
}

export interface OrdersAnswer extends Snapshot {
  at_risk: OrderRow[];
  on_course: OrderRow[];
  closed: OrderRow[];
}

export interface OrderWhole extends OrderRow {
  /** Only there for the owner and the order's own maker. */
  client_contact?: string;
  taken_at: string;
  closed_at: string | null;
  cancelled_at: string | null;
  revision: number;
  may: { change: boolean; plan: boolean; lift_display: boolean };
}

export interface SetRole {
  role: string;
  design_id: string;
  design_name: string;
  noun: string;
  count: number;
}

export interface Partner {
  id: string;
  mark: string;
  seat_gap_mm: number | null;
}

export interface OrderPiece extends PieceBrief {
  use: Use;
  grade: string;
  role: string | null;
  /** Which set it is counted in. */
  set: number | null;
  partners: Partner[];
  /** `lid for J06`. */
  words: string;
}

export interface OrderLine {
  id: string;
  what: string;
  wanted_sets: number;
  order: number;
  counts: OrderCounts;
  /** `2 wanted: 1 bisqued, 3 on the way, 1 lost`. */
  sentence: string;
  recipe: SetRole[];
  stages: (Spot & { count: number })[];
  pieces: OrderPiece[];
}

export interface TestReport {
  id: string;
  piece: Partner | null;
  occasion_name: string;
  glaze: string;
  laboratory: string;
  reported_on: string;
  lead_value: number;
  lead_is_below: boolean;
  cadmium_value: number;
  cadmium_is_below: boolean;
  unit: string;
  member: PersonRef;
}

export interface OrderAnswer extends Snapshot {
  commission: OrderWhole;
  lines: OrderLine[];
  reports: TestReport[];
  cautions: Caution[];
  warnings: Caution[];
}

/** Where a piece stood, from when to when; null is until now. */
export interface LifeSpan {
  stage: string;
  state: string;
  cover: string;
  from_at: string;
  until_at: string | null;
}

export interface PieceLife {
  id: string;
  mark: string;
  line_id: string | null;
  spans: LifeSpan[];
}

export interface LivesAnswer extends Snapshot {
  pieces: PieceLife[];
}

export interface Outlook {
  line_id: string;
  what: string;
  wanted_sets: number;
  still_needed: number;
  chance_words: string;
  /** Null under twenty of the studio's own outcomes. */
  chance: number | null;
  press: { more: number | null; by_role: { role: string; count: number }[]; words: string };
  latest_press: { confidence: number; date: string | null; words: string }[];
  likely_from: string | null;
  likely_until: string | null;
  risks: { code: string; words: string }[];
  basis: "guess" | "outcomes";
}

export interface OutlookAnswer extends Snapshot {
  promised_date: string | null;
  lines: Outlook[];
  words: string;
  is_at_risk: boolean | null;
  likely_from: string | null;
  likely_middle?: string | null;
  likely_until: string | null;
  basis: "guess" | "outcomes";
  outcomes: number;
  sources: string[];
}

export type ToldKind = "loss" | "firing" | "promise" | "client" | "making";

export interface OrderTold {
  id: string;
  seq: number;
  verb: string;
  kind: ToldKind;
  /** Of the order itself; empty where it is of pieces. */
  words: string;
  lines: { words: string; marks: string[]; piece_ids: string[] }[];
  happened_at: string;
  written_at: string;
  is_late: boolean;
  member: PersonRef;
  device: string;
  note: string | null;
  has_hidden_note: boolean;
  corrects: string | null;
  is_taken_back: boolean;
  taken_back_by: PersonRef | null;
  taken_back_at: string | null;
  came_from_other_order: boolean;
}

export interface Pages<Row> {
  results: Row[];
  next: string | null;
}

export interface FoundRow {
  id: string;
  what: string;
  mark_seen: string;
  place: PlaceRef | null;
  x_mm: number | null;
  y_mm: number | null;
  height_mm: number | null;
  body: { id: string; code: string; name: string } | null;
  state_words: string;
  found_at: string;
  found_by: PersonRef;
  notice_date: string;
  is_notice_past: boolean;
  state: "open" | "returned" | "disposed";
  piece: { id: string; mark: string } | null;
  claims_count: number;
}

export interface FoundOwner {
  member: PersonRef;
  piece: { id: string; mark: string; noun: string; state_words: string };
  why: string[];
}

export interface FoundClaim {
  id: string;
  member: PersonRef;
  piece: { id: string; mark: string } | null;
  at: string;
  note: string | null;
}

export interface FoundWhole extends FoundRow, Snapshot {
  candidates: FoundOwner[];
  claims: FoundClaim[];
  may: { dispose: boolean; settle: boolean };
  notice_words: string;
}

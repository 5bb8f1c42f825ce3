/** What the server answers, by name. */
import type { Units } from "../domain/format";

export interface Me {
  username: string;
  memberships: Membership[];
}

export interface Membership {
  studio: { id: string; slug: string; name: string; zone: string };
  member: {
    id: string;
    first_name: string;
    initials: string;
    roles: string[];
    grants: string[];
    units: Units;
    left_handed: boolean;
    theme: "sun" | "shed" | "phone" | null;
    text: 100 | 125 | 150 | 200 | null;
  };
}

export interface Quantiles {
  p10: string | null;
  p50: string | null;
  p90: string | null;
  p_never: number;
}

export interface Window {
  opens: Quantiles | null;
  closes: Quantiles | null;
}

export interface Basis {
  basis: "guess" | "checks";
  checks: number;
}

export interface PieceRef {
  id: string;
  mark: string;
  noun: string;
  design_name: string;
  stage: string;
  state: string;
  state_words: string;
}

export interface PartRef {
  id: string;
  role: string;
  state: string;
}

export interface PlaceRef {
  id: string;
  name: string;
}

export interface PersonRef {
  id: string;
  first_name: string;
  initials: string;
}

export type Verdict =
  | "past" | "in_window" | "later" | "not_today" | "asked" | "drying" | "worth_a_touch" | "not_in_this_room" | "ready";

export interface BenchRow {
  piece: PieceRef;
  part: PartRef | null;
  mould: { set_id: string; label: string; generation: number; press_since_dry: number | null } | null;
  place: PlaceRef | null;
  maker: PersonRef | null;
  mine: boolean;
  since_at: string;
  verdict: Verdict;
  reason: string;
  window: Window | null;
  ready_at: Quantiles | null;
  look_again_at: string | null;
  confidence: Basis;
  forecast_at: string | null;
  clash_id: string | null;
}

export interface JoinRow {
  piece: PieceRef;
  parts: PartRef[];
  place: PlaceRef | null;
  maker: PersonRef | null;
  mine: boolean;
  verdict: "now" | "wait" | "too_stiff";
  reason: string;
  window: Window | null;
  until: string | null;
  confidence: Basis;
  clash_id: string | null;
}

export interface MouldRow {
  set: { id: string; label: string; makes: string };
  casting: { id: string; generation: number };
  parts: { id: string; name: string; state: string }[];
  place: PlaceRef | null;
  owner: PersonRef | null;
  dryness: { word: "dry" | "usable" | "rest" | "unknown"; free_water_fraction: number | null; presses_since_dry: number | null };
  may_press: boolean;
  reason: string;
  next_booking: { member: PersonRef; from_at: string; until_at: string } | null;
}

export interface Snapshot {
  at: string;
  journal_seq: number;
}

export interface BenchAnswer extends Snapshot {
  forecast_at: string | null;
  confidence: Basis;
  look_now: BenchRow[];
  later_today: BenchRow[];
  later: BenchRow[];
  join_today: JoinRow[];
  press_next: MouldRow[];
  drying: BenchRow[];
  ready_for_bisque: BenchRow[];
}

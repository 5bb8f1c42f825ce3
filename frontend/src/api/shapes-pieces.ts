/** What the piece, the racks and the clashes answer. */
import type { Page } from "./pages";
import type { Basis, PersonRef, PieceRef, PlaceRef, Quantiles, Snapshot, Window } from "./shapes";

export type CoverState = "open" | "loose" | "tucked" | "sealed";
export type Feel = "soft" | "leather_hard" | "too_stiff" | "bone_dry";

export interface Spot {
  stage: string;
  state: string;
  words: string;
}

export interface PieceBrief extends PieceRef {
  design_id: string;
  place: PlaceRef | null;
  maker: PersonRef | null;
  mine: boolean;
  since_at: string;
  touched_at: string;
  cover: CoverState | "";
  clash_id: string | null;
  is_damaged: boolean;
  missing_roles: string[];
}

export interface PieceWhole extends PieceBrief {
  use: "food" | "display";
  grade: "first" | "second" | "";
  body: { id: string; code: string; name: string } | null;
  has_interrupted_bisque: boolean;
  look_again_at: string | null;
  begun_at: string;
}

export interface PartWhole {
  id: string;
  role: string;
  state: "to_press" | "in_mould" | "out" | "joined" | "scrapped" | "replaced";
  pressed_at: string | null;
  out_at: string | null;
  joined_at: string | null;
  ended_at: string | null;
  mould: { set_id: string; label: string; generation: number } | null;
  slab_block: { id: string; label: string } | null;
  replaces: string | null;
}

export interface Telling {
  id: string;
  verb: string;
  happened_at: string;
  written_at: string;
  is_late: boolean;
  member: PersonRef;
  device: string;
  words: string;
  note: string | null;
  corrects: string | null;
  is_taken_back: boolean;
  taken_back_by: PersonRef | null;
  is_also_said: boolean;
}

export interface Caution {
  code: string;
  detail: string;
}

export interface PieceAnswer extends Snapshot {
  piece: PieceWhole;
  parts: PartWhole[];
  stands_with?: PieceRef[];
  nexts: Spot[];
  backs: Spot[];
  waits_for: string | null;
  warnings: Caution[];
  /** What to mind at the next step. */
  cautions: Caution[];
  reclaim: string;
  /** The newest; `history_count` says how many there are. */
  story: Telling[];
  history_count: number;
}

export interface Evidence {
  kind: "weighing" | "check" | "cover" | "move";
  at: string;
  member: string;
  mass_g?: number;
  words?: string;
}

export interface Curve {
  t_at: string[];
  p10: number[];
  p50: number[];
  p90: number[];
  /** So many points, from the first, lie in the past. */
  known_points: number;
}

export interface DryingAnswer extends Snapshot {
  computed_at: string | null;
  verdict: string;
  sentence: string;
  curve: Curve | null;
  windows: { demould: Window; join: Window; shrinkage_ended: Quantiles; bisque: Quantiles } | null;
  unreachable: string[];
  evidence: Evidence[];
  assumed: string[];
  sources: string[];
  confidence: Basis;
}

export interface PieceList extends Snapshot, Page<PieceBrief> {}

export interface PlaceRow extends PlaceRef {
  kind: string;
  parent_id: string | null;
  order: number;
}

export interface ClashAct {
  id: string;
  verb: string;
  happened_at: string;
  written_at: string;
  member: PersonRef;
  device: string;
  words: string;
  detail: string;
}

export interface ClashRow {
  id: string;
  kind: string;
  state: "open" | "answered" | "gone";
  subject: { kind: string; id: string; mark: string; noun: string };
  opened_at: string;
  stands_meanwhile: { stage: string; state: string; words: string; place: PlaceRef | null };
  holds: string[];
  asked: PersonRef[];
  acts: ClashAct[];
  choices: { choice: "first" | "second" | "both"; consequence: string }[];
  may_answer: boolean;
}

export interface ClashAnswer extends Snapshot, ClashRow {}

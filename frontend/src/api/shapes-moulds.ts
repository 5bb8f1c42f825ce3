/** What moulds, designs and slab blocks answer. */
import type { PersonRef, PlaceRef, Quantiles, Snapshot } from "./shapes";

export interface Dryness {
  word: "dry" | "usable" | "rest" | "unknown";
  basis: "weighed" | "reckoned" | "presses" | "nothing";
  free_water_fraction: number | null;
  presses_since_dry: number;
  presses_left: number | null;
}

export interface Wear {
  word: string;
  pressings: number;
  pressings_left: number | null;
  looks_again_at: number | null;
}

export interface MouldPartRow {
  id: string;
  name: string;
  state: "whole" | "chipped" | "out_of_use" | "missing";
  state_reason: string;
  presses: number;
  presses_before: number;
  presses_before_by: PersonRef | null;
}

export interface CastingRow {
  id: string;
  mould_set_id: string;
  master: { id: string; label: string; is_ready: boolean };
  generation: number;
  poured_at: string | null;
  is_in_use: boolean;
  capacity_fraction: number;
  dry_g: number | null;
  now_g: number | null;
  weighed_at: string | null;
}

export interface BookingRow {
  id: string;
  mould_set_id: string;
  member: PersonRef;
  from_at: string;
  until_at: string;
  given_up_at: string | null;
}

export interface MouldSetAnswer {
  id: string;
  label: string;
  makes: { id: string; role: string; design_id: string; design_name: string };
  owner: PersonRef | null;
  place: PlaceRef | null;
  inspect_at_presses: number | null;
  retire_at_presses: number | null;
  casting: CastingRow | null;
  parts: MouldPartRow[];
  presses: number;
  dryness: Dryness;
  wear: Wear;
  next_booking: BookingRow | null;
}

export interface MouldReadiness extends Snapshot {
  word: string;
  dryness: Dryness;
  usable_at: Quantiles | null;
  dry_at: Quantiles | null;
  air: { place: PlaceRef | null; words: string; is_assumed: boolean } | null;
  wear: Wear;
  advice: { code: string; reason: string };
  cautions: string[];
}

export interface MouldWeighing {
  id: string;
  casting_id: string;
  happened_at: string;
  mass_g: number;
  is_dry: boolean;
}

export interface DesignRow {
  id: string;
  name: string;
  noun: string;
  series: string;
  parts: { id: string; role: string; count: number; is_required: boolean }[];
}

export interface BlockRow {
  id: string;
  label: string;
  laid_on: string | null;
  used_up_at: string | null;
  cautions: string[];
}

export interface StudioLimits {
  mould_dry_below_fraction: number;
  mould_usable_below_fraction: number;
}

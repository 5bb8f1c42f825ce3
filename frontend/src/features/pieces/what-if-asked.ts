/** What is sent to be reckoned of no piece, from what stands in the form. Pure. */
import type { CoverState, DryingSumAsked } from "../../api/shapes-pieces";

export const CLAYS = ["red_earthenware", "white_earthenware", "grogged_stoneware", "smooth_stoneware", "porcelain", "terracotta_crank"] as const;
export const SHAPES = [{ value: "flat", words: "A wall" }, { value: "rod", words: "A rod" }, { value: "lump", words: "A lump" }] as const;

export type Clay = (typeof CLAYS)[number];
export type SectionShape = (typeof SHAPES)[number]["value"];

export interface RoomAirNow {
  air_c: number;
  humidity_fraction: number;
}

/** What a room without a meter is taken to be; the server assumes the same. */
export const ASSUMED_AIR: RoomAirNow = { air_c: 15, humidity_fraction: 0.65 };

/** What is known before anything is changed. */
export interface Known {
  beganAt: Date;
  clay: Clay;
  shape: SectionShape;
  thickest_mm: number;
}

export interface Change {
  air: RoomAirNow | null;
  cover: CoverState | null;
  /** As typed, or as the server's own figure. */
  thickest_mm: string | number | null;
}

export const NO_CHANGE: Change = { air: null, cover: null, thickest_mm: null };

/** An ordinary wall that is pressed now. */
export function knownOf(now: Date): Known {
  return { beganAt: now, clay: "red_earthenware", shape: "flat", thickest_mm: 8 };
}

/** In the air it is pressed in, or with something else from the pressing on. */
export function askedOf(known: Known, air: RoomAirNow, change: Change): DryingSumAsked {
  return {
    begins_at: known.beganAt.toISOString(),
    clay: known.clay,
    shape: known.shape,
    thickest_mm: change.thickest_mm ?? known.thickest_mm,
    inside: "hollow",
    air: change.air ?? air,
    ...(change.cover ? { cover: change.cover } : {}),
    air_m_s: 0,
  };
}

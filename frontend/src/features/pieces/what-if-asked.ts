/** What is sent to be reckoned, from what stands in the form; the piece's own past comes first. Pure. */
import type { CoverState, DryingAnswer, DryingSumAsked } from "../../api/shapes-pieces";

const HOUR_MS = 3_600_000;
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
  /** Hours from the beginning. */
  covers: { from_h: number; state: CoverState }[];
  /** Since when it stands in a cupboard, which shuts it in whatever its own cover; null where it stands in none. [h] */
  shutFrom_h: number | null;
  /** The plaster it was pressed into, which drew water until it stood elsewhere; null where neither is known. */
  mould: { free_water_fraction: number; until_h: number } | null;
}

export interface Change {
  air: RoomAirNow | null;
  cover: CoverState | null;
  /** As typed, or as the server's own figure. */
  thickest_mm: string | number | null;
}

export const NO_CHANGE: Change = { air: null, cover: null, thickest_mm: null };

const oneOf = <Value extends string>(values: readonly Value[], said: unknown): Value | undefined => values.find((value) => value === said);

/** The piece's own section, clay and covers; of no piece, an ordinary wall that is pressed now. */
export function knownOf(drying: DryingAnswer | null, now: Date, isInCupboard = false): Known {
  const { inputs = {}, curve = null, evidence = [] } = drying ?? {};
  const first = curve?.t_at[0];
  const beganAt = first === undefined ? now : new Date(first);
  const thickest = inputs["thickest_mm"];
  const covers = evidence.filter(({ kind }) => kind === "cover").flatMap(({ at, words }) => {
    const state = oneOf<CoverState>(["open", "loose", "tucked", "sealed"], words);
    return state ? [{ from_h: Math.max(0, hoursBetween(beganAt, new Date(at))), state }] : [];
  });
  const water = inputs["mould_free_water_fraction"];
  const out = evidence.find(({ kind, at }) => ["cover", "move"].includes(kind) && hoursBetween(beganAt, new Date(at)) > 0.01);
  const moved = evidence.findLast(({ kind }) => kind === "move");
  return {
    beganAt,
    shutFrom_h: isInCupboard ? Math.max(0, hoursBetween(beganAt, moved ? new Date(moved.at) : beganAt)) : null,
    clay: oneOf(CLAYS, inputs["body"]) ?? "red_earthenware",
    shape: oneOf(SHAPES.map(({ value }) => value), inputs["shape"]) ?? "flat",
    thickest_mm: typeof thickest === "number" ? thickest : 8,
    covers: rising(covers),
    mould: typeof water === "number" && out ? { free_water_fraction: water, until_h: hoursBetween(beganAt, new Date(out.at)) } : null,
  };
}

/** The same as it is, or with a change from now on; a thickness is changed from the pressing on. */
export function askedOf(known: Known, air: RoomAirNow, change: Change, now: Date): DryingSumAsked {
  const now_h = Math.max(0, hoursBetween(known.beganAt, now));
  const airs = [{ from_h: 0, ...air }, ...(change.air ? [{ from_h: now_h, ...change.air }] : [])];
  const own = known.covers.filter(({ from_h }) => from_h <= now_h);
  const wanted = change.cover ?? own.at(-1)?.state ?? "open";
  const { shutFrom_h } = known;
  const covers = shutFrom_h === null
    ? [...own, ...(change.cover ? [{ from_h: now_h, state: change.cover }] : [])]
    : [...own.filter(({ from_h }) => from_h < shutFrom_h), { from_h: shutFrom_h, state: "sealed" as const }, ...(change.air ? [{ from_h: now_h, state: wanted }] : [])];
  return {
    begins_at: known.beganAt.toISOString(),
    clay: known.clay,
    shape: known.shape,
    thickest_mm: change.thickest_mm ?? known.thickest_mm,
    inside: "hollow",
    air_series: rising(airs),
    covers: rising(covers),
    mould: known.mould,
    air_m_s: 0,
  };
}

const hoursBetween = (from: Date, to: Date): number => (to.getTime() - from.getTime()) / HOUR_MS;

/** Of two at one hour the later said stands: the server takes hours that rise. */
function rising<Row extends { from_h: number }>(rows: readonly Row[]): Row[] {
  const sorted = [...rows].sort((one, other) => one.from_h - other.from_h);
  return sorted.filter((row, place) => (sorted[place + 1]?.from_h ?? Infinity) - row.from_h >= 0.01);
}

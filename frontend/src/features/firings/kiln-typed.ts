/** A kiln as somebody types it, in their own units, and the fields of the act that writes it. Pure. */
import type { KilnNow } from "../../api/shapes-firings";
import type { Units } from "../../domain/format";
import { quantity } from "../../domain/typed";
import type { JsonObject } from "../../offline/kept-act";

export type Floor = "rect" | "round";

export interface ShelfTyped {
  shape: Floor;
  width: string;
  depth: string;
  across: string;
  thickness: string;
  count: number;
}

export interface PostTyped {
  height: string;
  foot: string;
  count: number;
  isInside: boolean;
}

export interface KilnTyped {
  number: string;
  name: string;
  kind: "front" | "top";
  chamber: Floor;
  width: string;
  depth: string;
  across: string;
  height: string;
  top: string;
  /** Where it stands; nothing for a place of its own with no room around it. */
  roomId: string;
  elementsOn: string;
  firings: string;
  hotHours: string;
  sensorFirings: string;
  remarks: string;
  shelves: ShelfTyped[];
  posts: PostTyped[];
}

export const NO_SHELF: ShelfTyped = { shape: "rect", width: "", depth: "", across: "", thickness: "", count: 1 };
export const NO_POST: PostTyped = { height: "", foot: "", count: 4, isInside: true };
export const NO_KILN: KilnTyped = {
  number: "", name: "", kind: "front", chamber: "rect", width: "", depth: "", across: "", height: "", top: "", roomId: "", elementsOn: "", firings: "", hotHours: "", sensorFirings: "",
  remarks: "", shelves: [], posts: [],
};

const MM_PER_INCH = 25.4;

/** A figure without the tail that arithmetic leaves on it. */
export function plainFigure(value: number, places: number): string {
  return String(Number(value.toFixed(places)));
}

export function lengthTyped(length_mm: number | null, units: Units): string {
  if (length_mm === null) return "";
  return units.length === "mm" ? plainFigure(length_mm, 2) : plainFigure(length_mm / MM_PER_INCH, 4);
}

export function degreesTyped(celsius: number, units: Units): string {
  return plainFigure(units.temperature === "c" ? celsius : celsius * 1.8 + 32, 1);
}

export function degreesSent(typed: string, units: Units): number | string {
  return quantity(typed, units.temperature === "c" ? "°C" : "°F", "°C");
}

export function kilnTyped(kiln: KilnNow, units: Units): KilnTyped {
  const length = (mm: number | null): string => lengthTyped(mm, units);
  return {
    number: kiln.number, name: kiln.name, kind: kiln.kind, chamber: kiln.chamber, width: length(kiln.width_mm), depth: length(kiln.depth_mm), across: length(kiln.diameter_mm),
    height: length(kiln.height_mm), top: degreesTyped(kiln.top_c, units), roomId: "", elementsOn: kiln.elements_changed_on ?? "", firings: String(kiln.firings_before),
    hotHours: plainFigure(kiln.hot_hours_before, 1), sensorFirings: String(kiln.sensor_firings_before), remarks: kiln.remarks,
    shelves: kiln.shelves.map((shelf) => ({
      shape: shelf.shape, width: length(shelf.width_mm ?? null), depth: length(shelf.depth_mm ?? null), across: length(shelf.diameter_mm ?? null), thickness: length(shelf.thickness_mm ?? null),
      count: shelf.count ?? 1,
    })),
    posts: kiln.posts.map((post) => ({ height: length(post.height_mm ?? null), foot: length(post.footprint_mm ?? null), count: post.count ?? 1, isInside: post.stands_inside ?? false })),
  };
}

const counted = (typed: string): JsonObject[string] => (/^\d+$/.test(typed.trim()) ? Number(typed) : typed.trim());

function floorFields(shape: Floor, { width, depth, across }: Pick<KilnTyped, "width" | "depth" | "across">, sent: (typed: string) => number | string): JsonObject {
  return shape === "round" ? { diameter_mm: sent(across) } : { width_mm: sent(width), depth_mm: sent(depth) };
}

/** Everything that was typed; what stands empty and may is left out. */
export function kilnFields(typed: KilnTyped, units: Units): JsonObject {
  const sent = (text: string): number | string => quantity(text, units.length, "mm");
  const { chamber, elementsOn, firings, hotHours, sensorFirings } = typed;
  return {
    number: typed.number.trim(), name: typed.name.trim(), kind: typed.kind, chamber, ...floorFields(chamber, typed, sent), height_mm: sent(typed.height), top_c: degreesSent(typed.top, units),
    elements_changed_on: elementsOn === "" ? null : elementsOn, remarks: typed.remarks.trim(),
    ...(firings.trim() ? { firings_before: counted(firings) } : {}),
    ...(hotHours.trim() ? { hot_hours_before: Number.isFinite(Number(hotHours)) ? Number(hotHours) : hotHours } : {}),
    ...(sensorFirings.trim() ? { sensor_firings_before: counted(sensorFirings) } : {}),
    shelves: typed.shelves.map((shelf) => ({ shape: shelf.shape, ...floorFields(shelf.shape, shelf, sent), thickness_mm: sent(shelf.thickness), count: shelf.count })),
    posts: typed.posts.map(({ height, foot, count, isInside }) => ({ height_mm: sent(height), footprint_mm: sent(foot), count, stands_inside: isInside })),
  };
}

/** Only what is no longer as it was: a change of one figure touches no other, and a row kept in inches is not rounded anew. */
export function kilnChanges(before: KilnTyped, after: KilnTyped, units: Units): JsonObject {
  const [was, is] = [kilnFields(before, units), kilnFields(after, units)];
  const changed = Object.entries(is).filter(([name, value]) => JSON.stringify(value) !== JSON.stringify(was[name]));
  const gone = after.chamber === before.chamber ? {} : after.chamber === "round" ? { width_mm: null, depth_mm: null } : { diameter_mm: null };
  return { ...Object.fromEntries(changed), ...gone };
}

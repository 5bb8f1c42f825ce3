/** Found ware while it is typed: what it sends, and how a refused one stands in its form again. */
import type { Looks } from "../../api/shapes-orders";
import type { Units } from "../../domain/format";
import { asTyped, quantity } from "../../domain/typed";
import type { JsonObject } from "../../offline/kept-act";
import type { KeptAct } from "../../offline/kept-act";
import type { TakenPhoto } from "../common/taken-photo";
import { LOOKS } from "./found-words";

export interface FoundTyped {
  what: string;
  markSeen: string;
  placeId: string | null;
  placeName: string;
  x: string;
  y: string;
  height: string;
  looks: Looks;
  /** Not sent yet. */
  photos: TakenPhoto[];
  /** Sent already, with an act that was not taken. */
  photoIds: string[];
}

export function emptyFound(): FoundTyped {
  return { what: "", markSeen: "", placeId: null, placeName: "", x: "", y: "", height: "", looks: "", photos: [], photoIds: [] };
}

export function foundFields(typed: FoundTyped, units: Units): JsonObject {
  const size = (words: string): JsonObject[string] => (words.trim() === "" ? null : quantity(words, units.length, "mm"));
  return {
    what: typed.what.trim(), mark_seen: typed.markSeen.trim(), place_id: typed.placeId, x_mm: size(typed.x), y_mm: size(typed.y), height_mm: size(typed.height),
    looks: typed.looks, ...(typed.photoIds.length > 0 ? { photo_ids: typed.photoIds } : {}),
  };
}

export function foundAgain({ body, about }: Pick<KeptAct, "body" | "about">, units: Units): FoundTyped {
  const text = (name: string): string => { const value = body[name]; return typeof value === "string" ? value : ""; };
  const ids = body["photo_ids"];
  const size = (name: string): string => asTyped(body[name], units.length);
  return {
    what: text("what"), markSeen: text("mark_seen"), placeId: text("place_id") || null, placeName: about["place_name"] ?? "",
    x: size("x_mm"), y: size("y_mm"), height: size("height_mm"), looks: LOOKS.find((one) => one.value === body["looks"])?.value ?? "",
    photos: [], photoIds: Array.isArray(ids) ? ids.filter((id) => typeof id === "string") : [],
  };
}

/** Found ware in words: where, how large, how far along, how long it is kept. */
import type { FoundRow, Looks } from "../../api/shapes-orders";
import { date } from "../../domain/clock";
import { joinFacts, length } from "../../domain/format";
import type { Units } from "../../domain/format";
import { instantOf } from "../../domain/wall";

interface Around {
  now: Date;
  zone: string;
}

export const LOOKS: readonly { value: Exclude<Looks, "">; words: string }[] = [
  { value: "drying", words: "Still damp" },
  { value: "bone_dry", words: "Bone dry" },
  { value: "bisqued", words: "Bisqued" },
  { value: "glazed", words: "Glazed" },
  { value: "glaze_fired", words: "Glaze fired" },
];

/** `150 × 150 × 12 mm`; what was not measured is left out. */
export function sizeWords({ x_mm, y_mm, height_mm }: Pick<FoundRow, "x_mm" | "y_mm" | "height_mm">, units: Units): string {
  const known = [x_mm, y_mm, height_mm].filter((size) => size !== null);
  if (known.length === 0) return "";
  const words = known.map((size) => length(size, units));
  const unit = words[0]?.split("\u202f").at(-1) ?? "";
  return words.map((word, place) => (place < words.length - 1 ? word.replace(`\u202f${unit}`, "") : word)).join(" × ");
}

/** What stands under its name in the list. */
export function foundEvidence(row: FoundRow, { now, zone }: Around): string {
  if (row.state === "returned") return joinFacts(`given back${row.returned_to ? ` to ${row.returned_to.first_name}` : ""}`, row.place?.name);
  if (row.state === "disposed") return "let go";
  return joinFacts(row.looks_words, row.place?.name, keptWords(row, { now, zone }));
}

export function keptWords({ notice_date, is_notice_past }: FoundRow, { now, zone }: Around): string {
  const until = instantOf(`${notice_date}T12:00`, zone);
  if (!until) return "";
  return is_notice_past ? `kept until ${date(until, now, zone)}, gone by` : `kept until ${date(until, now, zone)}`;
}

/** How a row stands: claimed by more than one is two stories; past its day it wants a hand. */
export function foundNatch(row: FoundRow): "two" | "hand" | "next" | "done" {
  if (row.state !== "open") return "done";
  if (row.claims_count > 1) return "two";
  return row.claims_count === 1 || row.is_notice_past ? "hand" : "next";
}

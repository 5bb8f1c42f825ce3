/** A laboratory's report as a hand types it, and the fields of the act that keeps it. Pure. */
import type { JsonObject } from "../../offline/kept-act";

export interface ReportTyped {
  laboratory: string;
  day: string;
  batch: string;
  load: string;
  /** The design that was tested: how deep it is and what it holds come from there. */
  design: string;
  unit: "mg_per_l" | "mg_per_dm2";
  lead: string;
  cadmium: string;
  lidLead: string;
  lidCadmium: string;
  area: string;
}

export const NO_REPORT: ReportTyped = {
  laboratory: "", day: "", batch: "", load: "", design: "", unit: "mg_per_l", lead: "", cadmium: "", lidLead: "", lidCadmium: "", area: "",
};

export interface Tested {
  inside_depth_mm: number | null;
  capacity_ml: number | null;
  contact: string;
}

/** "< 0.1" as the laboratory wrote it: the figure, and that it looked no lower. What is no figure goes as typed, to be named. */
export function resultOf(typed: string): { value: number | string; isBelow: boolean } {
  const words = typed.trim().replace(",", ".");
  const isBelow = words.startsWith("<");
  const rest = isBelow ? words.slice(1).trim() : words;
  const value = Number(rest);
  return { value: rest !== "" && Number.isFinite(value) ? value : rest, isBelow };
}

function result(name: string, typed: string): JsonObject {
  const { value, isBelow } = resultOf(typed);
  return { [`${name}_value`]: value, [`${name}_is_below`]: isBelow };
}

function lid(name: string, typed: string): JsonObject {
  if (typed.trim() === "") return {};
  const { value, isBelow } = resultOf(typed);
  return { [`lid_${name}_mg`]: value, [`lid_${name}_is_below`]: isBelow };
}

export function reportFields(typed: ReportTyped, tested: Tested | null, orderId: string | null): JsonObject {
  const named: JsonObject = {};
  if (typed.batch !== "") named["glaze_batch_id"] = typed.batch;
  if (typed.load !== "") named["load_id"] = typed.load;
  if (orderId !== null) named["commission_id"] = orderId;
  if (typed.area.trim() !== "") named["area_dm2"] = resultOf(typed.area).value;
  if (tested !== null) {
    if (tested.inside_depth_mm !== null) named["depth_mm"] = tested.inside_depth_mm;
    if (tested.capacity_ml !== null) named["volume_ml"] = tested.capacity_ml;
    if (tested.contact !== "lid") named["contact"] = tested.contact;
  }
  return {
    ...named, laboratory: typed.laboratory.trim(), reported_on: typed.day, unit: typed.unit,
    ...result("lead", typed.lead), ...result("cadmium", typed.cadmium), ...lid("lead", typed.lidLead), ...lid("cadmium", typed.lidCadmium),
  };
}

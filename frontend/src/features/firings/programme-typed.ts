/** A programme as somebody types it, in their own degrees, and the fields of the act that writes it. Pure. */
import type { FiringKind, Programme } from "../../api/shapes-firings";
import type { Units } from "../../domain/format";
import type { JsonObject } from "../../offline/kept-act";
import { degreesSent, degreesTyped, plainFigure } from "./kiln-typed";

export interface LegTyped {
  to: string;
  /** Degrees an hour; nothing for as fast as the kiln goes. */
  rate: string;
  hold: string;
}

export interface ProgrammeTyped {
  name: string;
  kind: FiringKind;
  cone: string;
  top: string;
  legs: LegTyped[];
}

export const NO_LEG: LegTyped = { to: "", rate: "", hold: "" };
export const NO_PROGRAMME: ProgrammeTyped = { name: "", kind: "bisque", cone: "", top: "", legs: [NO_LEG] };

/** How many of the person's degrees are one kelvin. */
const perKelvin = (units: Units): number => (units.temperature === "c" ? 1 : 1.8);

export function programmeTyped(programme: Programme, units: Units): ProgrammeTyped {
  const { name, kind, cone, top_c, segments } = programme;
  return {
    name, kind, cone, top: degreesTyped(top_c, units),
    legs: segments.map(({ to_c, rate_c_per_h, hold_min }) => ({
      to: degreesTyped(to_c, units), rate: rate_c_per_h === null ? "" : plainFigure(rate_c_per_h * perKelvin(units), 2), hold: hold_min === 0 ? "" : String(hold_min),
    })),
  };
}

function numberOf(typed: string, share = 1): number | string {
  const figure = Number(typed.trim().replace(",", "."));
  return Number.isFinite(figure) ? Number((figure * share).toFixed(4)) : typed.trim();
}

export function programmeFields(typed: ProgrammeTyped, units: Units): JsonObject {
  const written = typed.legs.filter(({ to, rate, hold }) => (to + rate + hold).trim() !== "");
  return {
    name: typed.name.trim(), kind: typed.kind, cone: typed.cone.trim(), top_c: degreesSent(typed.top, units),
    segments: written.map(({ to, rate, hold }) => ({
      to_c: degreesSent(to, units), rate_c_per_h: rate.trim() === "" ? null : numberOf(rate, 1 / perKelvin(units)), hold_min: hold.trim() === "" ? 0 : numberOf(hold),
    })),
  };
}

export function programmeChanges(before: ProgrammeTyped, after: ProgrammeTyped, units: Units): JsonObject {
  const [was, is] = [programmeFields(before, units), programmeFields(after, units)];
  return Object.fromEntries(Object.entries(is).filter(([name, value]) => JSON.stringify(value) !== JSON.stringify(was[name])));
}

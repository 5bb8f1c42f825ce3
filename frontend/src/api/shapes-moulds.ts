/** What moulds, designs and slab blocks answer, under our own names; the shapes are generated from the server's OpenAPI. */
import type { Answered } from "./answered";
import type { components } from "./schema";

type Schemas = components["schemas"];
type Whole<Name extends keyof Schemas> = Answered<Schemas[Name]>;

export type Dryness = Whole<"DrynessOut">;
export type MouldPartRow = Whole<"MouldPartOut">;
export type CastingRow = Whole<"CastingOut">;
export type BookingRow = Whole<"BookingOut">;
export type MouldSetAnswer = Whole<"MouldSetOut">;
export type MouldReadiness = Whole<"ReadinessOut">;
export type InspectionRow = Whole<"InspectionRowOut">;
export type MouldWeighing = Whole<"MouldWeighingRowOut">;
export type CrumbCheck = Whole<"CrumbCheckOut">;
export type DesignRow = Whole<"DesignOut">;
export type BlockRow = Whole<"SlabBlockOut">;
export type StudioLimits = Pick<Whole<"SettingsOut">, "mould_dry_below_fraction" | "mould_usable_below_fraction">;

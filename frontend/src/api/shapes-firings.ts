/** What kilns, loads, readings and waiting ware answer. */
import type { components } from "./schema";
import type { Snapshot } from "./shapes";

type Schemas = components["schemas"];

export type Caution = Schemas["WordOut"];

export type KilnsAnswer = Schemas["KilnsOut"];
export type KilnNow = Schemas["KilnOut"];
export type Coming = Schemas["ComingOut"];
export type Opening = NonNullable<KilnNow["opening"]>;
export type Programme = Schemas["ProgrammeOut"];

export type LoadBrief = Schemas["LoadBriefOut"];
export type LoadAnswer = Schemas["LoadScreenOut"];
export type LoadWhole = Schemas["LoadOut"];
export type LoadState = LoadBrief["state"];
export type FiringKind = LoadBrief["kind"];
export type EventKind = Schemas["LoadEventOut"]["kind"];
export type LoadEvent = Schemas["LoadEventOut"];
export type Placement = Schemas["PlacementOut"];
export type KilnReading = Schemas["KilnReadingOut"];
export type ConeSeen = Schemas["ConeSeenOut"];
export type ConeRole = ConeSeen["role"];
export type StopChoice = Schemas["StopChoiceOut"];
export type Outcome = "fired" | "not_fired" | "unsure";
export type Result = "fired" | "not_fired" | "broken" | "damp";

export type KilnReadAnswer = Schemas["KilnReadOut"];
export type TicketRow = Schemas["FiringTicketOut"];

export type ServiceRow = Schemas["ServiceOut"];
export type ServiceKind = ServiceRow["kind"];

export type FeesAnswer = Schemas["FeesOut"];
export type FeeShare = Schemas["FeeShareOut"];

export type FitAnswer = Schemas["FitOut"];
export type FitLevel = Schemas["FitLevelOut"];
export type FitItem = Schemas["FitItemOut"];

export type QueueAnswer = Schemas["QueueOut"];
export type QueueGroup = Schemas["QueueGroupOut"];
export type QueueRow = Schemas["QueueRowOut"];
export type CouldGoAnswer = Schemas["CouldGoOut"];
export type CouldGoRow = Schemas["CouldGoRowOut"];

/** When somebody is usually in, on the studio's own clocks; Monday is 0. */
export interface StudioHours {
  weekly: { weekday: number; opens: string; closes: string }[];
  closed_days: { date: string; why: string }[];
}

/** One piece that was not put on a load, and why. */
export interface NotPlaced {
  id: string;
  mark: string;
  code: string;
  detail: string;
}

export interface LoadNamed {
  id: string;
  number: string;
  starts_at: string;
}

export type { Snapshot };

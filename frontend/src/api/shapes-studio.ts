/** What reminders, devices, tokens, people and the air answer, under our own names; generated from the server's OpenAPI. */
import type { Answered } from "./answered";
import type { Page } from "./pages";
import type { Snapshot } from "./shapes";
import type { components } from "./schema";

type Schemas = components["schemas"];
type Whole<Name extends keyof Schemas> = Answered<Schemas[Name]>;
/** Lists of words kept as JSON, which the document cannot name. */
type WithWords<Shape, Name extends keyof Shape> = Omit<Shape, Name> & Record<Name, string[]>;


export type ReminderObject = { kind: string; id: string; mark: string };
export type Reminder = Omit<Whole<"ReminderOut">, "objects"> & { objects: ReminderObject[] };
export type ReminderPage = Page<Reminder> & Partial<Snapshot>;
export type PhotoRow = Whole<"PhotoOut">;
export type DeviceRow = Whole<"DeviceOut">;
export type TokenRow = Whole<"TokenOut">;
export type MemberRow = WithWords<Whole<"MemberOut">, "roles">;
export type InvitationRow = WithWords<Whole<"InvitationOut">, "roles">;
export type ReadingRow = Whole<"ReadingOut">;
export type BackupRow = Whole<"BackupOut">;
export type BackupTry = Whole<"BackupTryOut">;
export type BackupsRead = Whole<"BackupsOut">;
export type RefusedRow = Whole<"RefusedOut">;
export type HeldRow = Omit<Whole<"HeldActOut">, "body"> & { body: Record<string, unknown> };

/** A new order while it is typed: what it will send, what is still missing, and how a refused one stands in its form again. */
import type { Use } from "../../api/shapes-orders";
import type { Json, JsonObject } from "../../offline/kept-act";
import { uuid7 } from "../../offline/ids";

export interface DraftRole {
  designId: string;
  role: string;
  count: number;
}

export interface DraftLine {
  id: string;
  what: string;
  wanted: number;
  roles: DraftRole[];
}

export interface OrderDraftForm {
  number: string;
  client: string;
  contact: string;
  what: string;
  use: Use | null;
  promised: string;
  lines: DraftLine[];
}

export function emptyLine(): DraftLine {
  return { id: uuid7(), what: "", wanted: 1, roles: [] };
}

export function emptyOrder(): OrderDraftForm {
  return { number: "", client: "", contact: "", what: "", use: null, promised: "", lines: [emptyLine()] };
}

/** Lines nobody wrote anything into are not sent. */
export function writtenLines({ lines }: OrderDraftForm): DraftLine[] {
  return lines.filter((line) => line.what.trim() !== "" || line.roles.some((role) => role.designId !== ""));
}

const roleOf = ({ designId, role, count }: DraftRole): Json => ({ role, design_id: designId, count });

export function orderFields(draft: OrderDraftForm): JsonObject {
  const lines = writtenLines(draft).map((line): Json => ({
    id: line.id, what: (line.what.trim() || line.roles.map((role) => role.role).join(" and ")), wanted_sets: line.wanted,
    recipe: line.roles.filter((role) => role.designId !== "").map(roleOf),
  }));
  return {
    ...(draft.number.trim() ? { number: draft.number.trim() } : {}),
    client_name: draft.client.trim(), client_contact: draft.contact.trim(), what: draft.what.trim(), use: draft.use ?? "food",
    promised_date: draft.promised || null, lines,
  };
}

/** What the person still has to say, under the pointer its fault would have. */
export function missing(draft: OrderDraftForm): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  if (draft.client.trim() === "") found.set("#/client_name", "For whom is it?");
  if (draft.what.trim() === "") found.set("#/what", "What is wanted, in a few words?");
  if (draft.use === null) found.set("#/use", "Say what it is for: it decides what has to be recorded.");
  return found;
}

const text = (value: Json | undefined): string => (typeof value === "string" ? value : "");
const figure = (value: Json | undefined): number => (typeof value === "number" ? value : 1);
const rows = (value: Json | undefined): JsonObject[] => (Array.isArray(value) ? value.filter((row): row is JsonObject => typeof row === "object" && row !== null && !Array.isArray(row)) : []);

/** The form as it was typed, from an act the studio did not take. */
export function orderTyped(body: JsonObject): OrderDraftForm {
  const lines = rows(body["lines"]).map((line) => ({
    id: text(line["id"]) || uuid7(), what: text(line["what"]), wanted: figure(line["wanted_sets"]),
    roles: rows(line["recipe"]).map((role) => ({ designId: text(role["design_id"]), role: text(role["role"]), count: figure(role["count"]) })),
  }));
  const use = body["use"];
  return {
    number: text(body["number"]), client: text(body["client_name"]), contact: text(body["client_contact"]), what: text(body["what"]),
    use: use === "food" || use === "display" ? use : null, promised: text(body["promised_date"]), lines: lines.length > 0 ? lines : [emptyLine()],
  };
}

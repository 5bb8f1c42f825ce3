/** What is written of an order itself, as it is typed anew: only what differs is sent. */
import type { OrderWhole, Use } from "../../api/shapes-orders";
import type { JsonObject } from "../../offline/kept-act";

export interface OrderWords {
  client: string;
  /** Null where this person is not told how to reach the client. */
  contact: string | null;
  what: string;
  use: Use;
  note: string;
}

export function wordsOfOrder({ client_name, client_contact, what, use }: OrderWhole): OrderWords {
  return { client: client_name, contact: client_contact ?? null, what, use, note: "" };
}

export function changedFields(before: OrderWords, typed: OrderWords): JsonObject {
  const fields: JsonObject = {};
  if (typed.client.trim() !== before.client) fields["client_name"] = typed.client.trim();
  if (typed.contact !== null && typed.contact.trim() !== before.contact) fields["client_contact"] = typed.contact.trim();
  if (typed.what.trim() !== before.what) fields["what"] = typed.what.trim();
  if (typed.use !== before.use) fields["use"] = typed.use;
  if (typed.note.trim() !== "") fields["note"] = typed.note.trim();
  return fields;
}

/** What is missing, under the pointer its fault would have. */
export function missingWords({ client, what }: OrderWords): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  if (client.trim() === "") found.set("#/client_name", "For whom is it?");
  if (what.trim() === "") found.set("#/what", "What is wanted, in a few words?");
  return found;
}

/** An act as the phone keeps it, from the tap until the studio's own answer shows it. */
import type { Problem } from "../api/problem";

export type Json = string | number | boolean | null | Json[] | { [key: string]: Json };
export type JsonObject = Record<string, Json>;

export interface Envelope {
  id: string;
  happened_at: string;
  based_on: number;
  corrects: string | null;
}

export interface KeptAct {
  /** Order made on this phone; the outbox sends in this order. */
  order: number;
  id: string;
  /** Whose act it is: only their own session may send it. */
  username: string;
  /** On a shared phone: who held it when the act was made; it is sent as theirs, whoever holds it by then. */
  memberId?: string | null;
  /** Their PIN, where the act takes one: kept until the act has been answered, and no longer. */
  pin?: string | null;
  slug: string;
  path: string;
  /** The envelope and the act's own fields, without `sent_at`, which is the time of sending. */
  body: JsonObject;
  /** What happened, for overlays: `demoulded`, `not_yet`, `pressed`, `retracted`. */
  verb: string;
  /** What it happened to, for overlays: `{ part_id, piece_id }`. */
  about: Record<string, string>;
  /** What the person asked, in words, for the screen of what was not taken. */
  words: string;
  /** Ids that exist only once this act is heard; acts naming them wait for it, and are parked with it. */
  creates: string[];
  photo: Blob | null;
  made_at: string;
  /** `held`: the studio keeps it for its owner to look at. */
  state: "waiting" | "heard" | "parked" | "held";
  tries: number;
  /** Not before then. [ms since 1970] */
  waitUntil: number;
  /** True when the server named the wait itself; then not even a person's tap shortens it. */
  isWaitAsked: boolean;
  seq: number | null;
  problem: Problem | null;
}

/** Acts a snapshot cannot show yet: still waiting, or heard after the snapshot was taken. Retracted pairs cancel. */
export function unseenBy(snapshotSeq: number, acts: readonly KeptAct[]): KeptAct[] {
  const unseen = acts.filter((act) => act.state === "waiting" || (act.state === "heard" && (act.seq ?? Infinity) > snapshotSeq));
  const taken = new Set(unseen.filter((act) => act.verb === "retracted").map((act) => act.body["corrects"]));
  const isWhole = (act: KeptAct): boolean => act.verb !== "retracted" || !unseen.some((other) => other.id === act.body["corrects"]);
  return unseen.filter((act) => !taken.has(act.id) && isWhole(act));
}

/** True when `act` names `id` anywhere in what it would send. */
export function names(act: KeptAct, id: string): boolean {
  return act.path.includes(id) || JSON.stringify(act.body).includes(id);
}

/** `first` and every later act that cannot stand without it, directly or through another. */
export function withDependents(first: KeptAct, later: readonly KeptAct[]): KeptAct[] {
  const fallen = [first];
  const missing = [first.id, ...first.creates];
  for (const act of later) {
    if (act.order <= first.order || act.slug !== first.slug) continue;
    if (!missing.some((id) => names(act, id))) continue;
    fallen.push(act);
    missing.push(act.id, ...act.creates);
  }
  return fallen;
}

/** A phone that lies in the shed for everybody: its key, and who may pick it up. Kept apart from who holds it now. */
import type { Membership, SharedPerson, SharedStudio } from "../api/shapes";
import { dropKept, readKept, writeKept } from "./db";

export interface SharedPhone {
  deviceId: string;
  key: string;
  name: string;
  studio: SharedStudio;
  people: readonly SharedPerson[];
  /** What each may do, as last heard: so that they can pick it up without signal. */
  known: Readonly<Record<string, Membership>>;
  /** An owner signed it off: it only sends what it had kept. */
  isGone: boolean;
}

const KEY = "shared";
const SHARED = "shared:";

export async function readShared(db: IDBDatabase): Promise<SharedPhone | null> {
  // Written by `writeShared` alone.
  return ((await readKept(db, KEY)) as SharedPhone | undefined) ?? null;
}

export async function writeShared(db: IDBDatabase, phone: SharedPhone): Promise<void> {
  await writeKept(db, KEY, phone);
}

export async function dropShared(db: IDBDatabase): Promise<void> {
  await dropKept(db, KEY);
}

/** The name under which the outbox keeps what is made on it: all of it is one queue, each act with its own hand. */
export function senderOf(phone: SharedPhone): string {
  return `${SHARED}${phone.deviceId}`;
}

/** True of what was made on a shared phone: nobody's own session sends it. */
export function isOfShared(sender: string): boolean {
  return sender.startsWith(SHARED);
}

/** What takes a PIN there, as anybody can tap a technician's initials: whatever is about kilns. */
const OF_KILNS = /^(?:loads|kilns|programmes)\//;
const KILN_GRANTS: readonly string[] = ["build_loads", "settle_loads", "record_firings", "plan_firings", "override_dryness", "service_kilns"];

/** True where the studio would ask for the PIN: known beforehand, so that it can be typed without signal. */
export function takesPin(path: string, { member }: Membership): boolean {
  return member.has_pin && OF_KILNS.test(path) && member.grants.some((grant) => KILN_GRANTS.includes(grant));
}

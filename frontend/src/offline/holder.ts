/** Who holds this phone, as kept from one start to the next. */
import type { Me } from "../api/shapes";
import { dropKept, readKept, writeKept } from "./db";

export interface Holder {
  me: Me;
  slug: string;
  deviceId: string;
}

const KEY = "holder";
const DEVICES = "devices";

export async function readHolder(db: IDBDatabase): Promise<Holder | null> {
  // Written by `writeHolder` alone.
  return ((await readKept(db, KEY)) as Holder | undefined) ?? null;
}

export async function writeHolder(db: IDBDatabase, holder: Holder): Promise<void> {
  await writeKept(db, KEY, holder);
}

export async function dropHolder(db: IDBDatabase): Promise<void> {
  await dropKept(db, KEY);
}

/** The id this phone has in that studio for that person; a studio knows a phone by whose it is. */
export async function deviceIdOf(db: IDBDatabase, slug: string, username: string): Promise<string | null> {
  // Written by `writeDeviceId` alone.
  const known = ((await readKept(db, DEVICES)) as Record<string, string> | undefined) ?? {};
  return known[`${slug}:${username}`] ?? null;
}

export async function writeDeviceId(db: IDBDatabase, slug: string, username: string, id: string): Promise<void> {
  const known = ((await readKept(db, DEVICES)) as Record<string, string> | undefined) ?? {};
  await writeKept(db, DEVICES, { ...known, [`${slug}:${username}`]: id });
}

/** The read cache on the phone: one per device and member, so that a phone handed over shows nothing of the last hand. */
import type { PersistedClient, Persister } from "@tanstack/preact-query-persist-client";
import { answered, dropKept, inside, readKept, writeKept } from "./db";

const PREFIX = "cache:";

export function cacheKey(deviceId: string, memberId: string): string {
  return `${PREFIX}${deviceId}:${memberId}`;
}

/** Where something small of one hand is kept, and forgotten with what that hand read. */
export function keyOfHand(what: string, memberId: string): string {
  return `${PREFIX}${what}:${memberId}`;
}

/** Raised whenever all is forgotten, so that what a page still meant to write of an earlier hand is not written after all. */
let hand = 0;

/** Forget whatever anybody read on this phone; what stands on the screen goes with the screen. */
export async function dropCaches(db: IDBDatabase): Promise<void> {
  hand += 1;
  await inside(db, "kept", "readwrite", (table) => answered(table.delete(IDBKeyRange.bound(PREFIX, `${PREFIX}\uffff`))));
}

/** Reads come in bursts; one write a second keeps up with them. [ms] */
export const WRITE_EVERY_MS = 1_000;

export function cachePersister(db: IDBDatabase, key: string): Persister {
  let newest: PersistedClient | null = null;
  const mine = hand;
  const write = (): void => {
    if (newest === null || hand !== mine) return;
    // A full phone loses the copy of what was read, and nothing else.
    writeKept(db, key, newest).catch(() => undefined);
    newest = null;
  };
  return {
    persistClient: (client) => {
      if (newest === null) setTimeout(write, WRITE_EVERY_MS);
      newest = client;
    },
    // Written by the line above and by nothing else.
    restoreClient: async () => (await readKept(db, key)) as PersistedClient | undefined,
    removeClient: () => dropKept(db, key),
  };
}

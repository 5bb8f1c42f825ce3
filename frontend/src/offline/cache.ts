/** The read cache on the phone: one per device and member, so that a phone handed over shows nothing of the last hand. */
import type { PersistedClient, Persister } from "@tanstack/preact-query-persist-client";
import { dropKept, readKept, writeKept } from "./db";

const PREFIX = "cache:";

export function cacheKey(deviceId: string, memberId: string): string {
  return `${PREFIX}${deviceId}:${memberId}`;
}

export function cachePersister(db: IDBDatabase, key: string): Persister {
  return {
    persistClient: (client) => writeKept(db, key, client),
    // Written by the line above and by nothing else.
    restoreClient: async () => (await readKept(db, key)) as PersistedClient | undefined,
    removeClient: () => dropKept(db, key),
  };
}

/** The read cache on the phone: one per device and member, so that a phone handed over shows nothing of the last hand. */
import type { PersistedClient, Persister } from "@tanstack/preact-query-persist-client";
import { dropKept, readKept, writeKept } from "./db";

const PREFIX = "cache:";

export function cacheKey(deviceId: string, memberId: string): string {
  return `${PREFIX}${deviceId}:${memberId}`;
}

/** Reads come in bursts; one write a second keeps up with them. [ms] */
export const WRITE_EVERY_MS = 1_000;

export function cachePersister(db: IDBDatabase, key: string): Persister {
  let newest: PersistedClient | null = null;
  const write = (): void => {
    if (newest === null) return;
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

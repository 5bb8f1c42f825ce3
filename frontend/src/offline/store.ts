/** The two tables of the outbox: acts in the order made, and the one row that says which tab sends them. */
import { answered, inside } from "./db";
import type { KeptAct } from "./kept-act";

/**
 * How long a tab that sends keeps the others waiting. [ms] Short, since a page may go without a word; two tabs that
 * send the same act are no harm, for its id makes it one.
 */
export const LEASE_MS = 6_000;

export interface Lease {
  holder: string;
  until: number;
}

export interface ActStore {
  all(): Promise<KeptAct[]>;
  /** Keep new acts in this order, all or none; an id already kept is left as it is. */
  add(acts: readonly Omit<KeptAct, "order">[]): Promise<void>;
  put(acts: readonly KeptAct[]): Promise<void>;
  remove(orders: readonly number[]): Promise<void>;
  /** Take or renew the lease; false when another tab holds it. */
  lease(holder: string, now: number): Promise<boolean>;
  release(holder: string): Promise<void>;
}

export function actStore(db: IDBDatabase): ActStore {
  return {
    // The table is written by `add` and `put` alone, so what it holds are acts.
    all: () => inside(db, "acts", "readonly", (table) => answered(table.getAll() as IDBRequest<KeptAct[]>)),
    add: (acts) =>
      inside(db, "acts", "readwrite", async (table) => {
        for (const act of acts) {
          const known = await answered(table.index("id").getKey(act.id));
          if (known === undefined) await answered(table.add(act));
        }
      }),
    put: (acts) =>
      inside(db, "acts", "readwrite", async (table) => {
        await Promise.all(acts.map((act) => answered(table.put(act))));
      }),
    remove: (orders) =>
      inside(db, "acts", "readwrite", async (table) => {
        await Promise.all(orders.map((order) => answered(table.delete(order))));
      }),
    lease: (holder, now) =>
      inside(db, "lease", "readwrite", async (table) => {
        // Only this function writes the row.
        const held = (await answered(table.get("drainer"))) as Lease | undefined;
        if (held && held.holder !== holder && held.until > now) return false;
        await answered(table.put({ holder, until: now + LEASE_MS } satisfies Lease, "drainer"));
        return true;
      }),
    release: (holder) =>
      inside(db, "lease", "readwrite", async (table) => {
        const held = (await answered(table.get("drainer"))) as Lease | undefined;
        if (held?.holder === holder) await answered(table.delete("drainer"));
      }),
  };
}

/** What this hand last pressed in each mould, kept on the phone: a page loaded anew asks the same *another 12?*. */
import { keyOfHand } from "../../offline/cache";
import { readKept, writeKept } from "../../offline/db";
import { AGAIN_MS } from "./press-plan";
import type { LastPress } from "./press-plan";

type ByMould = Record<string, LastPress>;

export interface LastPresses {
  of: (setId: string) => Promise<LastPress | null>;
  remember: (setId: string, press: LastPress) => Promise<void>;
  forget: (setId: string) => Promise<void>;
}

export function lastPresses(db: IDBDatabase, memberId: string): LastPresses {
  const key = keyOfHand("pressed", memberId);
  const all = async (): Promise<ByMould> => ((await readKept(db, key)) as ByMould | undefined) ?? {};
  const keep = async (setId: string, press: LastPress | null): Promise<void> => {
    // What is too long ago to be asked about goes with it.
    const near = Object.entries(await all()).filter(([id, { at }]) => id !== setId && Date.now() - at.getTime() < AGAIN_MS);
    await writeKept(db, key, Object.fromEntries(press === null ? near : [...near, [setId, press]]));
  };
  return {
    of: async (setId) => (await all())[setId] ?? null,
    remember: keep,
    forget: (setId) => keep(setId, null),
  };
}

/** Numbers for new pieces of a series: lent ahead while there is signal, cut without it. */
import { useCallback, useEffect, useState } from "preact/hooks";
import { ask } from "../../api/client";
import { OfflineError, ProblemError } from "../../api/problem";
import { uuid7 } from "../../offline/ids";
import { keepLent, keyOf, left, peek, readLent, takeMarks } from "../../offline/numbers";
import type { Lent } from "../../offline/numbers";
import { studioPath, useSession } from "../common/session";

/** Below so many, more are asked for. */
const LOW = 8;

export interface Numbers {
  /** True once this phone's own numbers are known. */
  isKnown: boolean;
  marks: (count: number) => string[];
  take: (count: number) => Promise<string[]>;
}

export function useNumbers(series: string | null): Numbers {
  const { phone: { db }, membership, deviceId } = useSession();
  const { slug } = membership.studio;
  const [lent, setLent] = useState<readonly Lent[] | null>(null);
  const key = series === null ? null : keyOf(slug, deviceId, series);

  useEffect(() => {
    if (key === null || series === null) return undefined;
    let isGone = false;
    const fill = async (): Promise<void> => {
      const kept = await readLent(db, key);
      if (!isGone) setLent(kept);
      if (left(kept) >= LOW) return;
      const more = await lease(slug, series);
      if (more === null) return;
      const all = await keepLent(db, key, more.first, more.last);
      if (!isGone) setLent(all);
    };
    void fill();
    return () => { isGone = true; };
  }, [db, key, series, slug]);

  const take = useCallback(
    async (count: number): Promise<string[]> => {
      if (key === null || series === null) return [];
      const marks = await takeMarks(db, key, series, count);
      setLent(await readLent(db, key));
      return marks;
    },
    [db, key, series],
  );
  return { isKnown: lent !== null, marks: (count) => (series === null ? [] : peek(series, lent ?? [], count)), take };
}

/** Null without signal, or where this person may not press: then the mark is typed as it is cut. */
async function lease(slug: string, series: string): Promise<{ first: number; last: number } | null> {
  const body = { id: uuid7(), happened_at: new Date().toISOString(), based_on: 0, series };
  try {
    return await ask<{ first: number; last: number }>({ method: "POST", path: studioPath(slug, "number-blocks/"), body });
  } catch (error) {
    if (error instanceof OfflineError || error instanceof ProblemError) return null;
    throw error;
  }
}

/** What was typed into a form and not kept yet: it outlives the screen and the tab, and goes with the hand that holds the phone. */
import { useIsRestoring, useQueryClient } from "@tanstack/preact-query";
import { useEffect, useMemo, useState } from "preact/hooks";
import { useSession } from "./session";

export interface Drafting<Draft> {
  draft: Draft;
  change: (part: Partial<Draft>) => void;
  clear: () => void;
}

/** It lies with what was read, in the copy of this device and member, but under no studio's key: nothing asks for it anew. */
export function useDraft<Draft extends object>(name: string, empty: () => Draft): Drafting<Draft> {
  const { studio } = useSession().membership;
  const reading = useQueryClient();
  const isRestoring = useIsRestoring();
  const key = useMemo(() => ["typed", studio.slug, name], [studio.slug, name]);
  const [draft, set] = useState<Draft>(() => reading.getQueryData<Draft>(key) ?? empty());
  useEffect(() => {
    // The copy on the phone is read a moment after the page opens: a camera may have sent the page away meanwhile.
    const before = isRestoring ? undefined : reading.getQueryData<Draft>(key);
    if (before !== undefined) set(before);
  }, [isRestoring, reading, key]);
  const keep = (next: Draft): void => {
    set(next);
    reading.setQueryData(key, next);
  };
  return {
    draft,
    change: (part) => { keep({ ...draft, ...part }); },
    clear: () => { reading.removeQueries({ queryKey: key, exact: true }); },
  };
}

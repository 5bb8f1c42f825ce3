/** What was typed into a form and not kept yet: it outlives the screen and the tab, and goes with the hand that holds the phone. */
import { useQueryClient } from "@tanstack/preact-query";
import { useState } from "preact/hooks";
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
  const key = ["typed", studio.slug, name];
  const [draft, set] = useState<Draft>(() => reading.getQueryData<Draft>(key) ?? empty());
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

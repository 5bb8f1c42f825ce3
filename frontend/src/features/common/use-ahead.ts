/** Read beforehand, while there is signal, what the hand will want where there is none. */
import { useQueryClient } from "@tanstack/preact-query";
import { useEffect } from "preact/hooks";
import { get } from "../../api/client";
import { getEvery } from "../../api/pages";
import { OfflineError } from "../../api/problem";
import { studioPath, useSession } from "./session";

/** As `useScreen` and `useWholeList` take them: whatever reads the same path must read it alike. */
export interface Ahead {
  path: string;
  isWholeList?: boolean;
}

/** The screen's own questions go first, and a glance costs nothing. [ms] */
export const REST_MS = 4_000;
/** [ms] */
const GOOD_FOR_MS = 30 * 60_000;

/** One after the other, for as long as the screen is open and `isHeard` says that the studio answers. */
export function useAhead(wanted: readonly Ahead[], isHeard: boolean, rest_ms = REST_MS): void {
  const { phone: { outbox }, membership: { studio: { slug } } } = useSession();
  const queries = useQueryClient();
  const asked = JSON.stringify(wanted);
  useEffect(() => {
    if (!isHeard) return undefined;
    let isLeft = false;
    const readAll = async (): Promise<void> => {
      for (const { path, isWholeList } of JSON.parse(asked) as Ahead[]) {
        // What is sent meanwhile changes what would be read.
        if (isLeft || outbox.state().isSending) return;
        const queryKey = [slug, path];
        if (Date.now() - (queries.getQueryState(queryKey)?.dataUpdatedAt ?? 0) < GOOD_FOR_MS) continue;
        const read = isWholeList ? getEvery : get;
        try {
          await queries.fetchQuery({ queryKey, queryFn: ({ signal }) => read(studioPath(slug, path), signal), retry: false });
        } catch (error) {
          // Whatever else is wrong with it, its own screen says.
          if (error instanceof OfflineError) return;
        }
      }
    };
    const timer = setTimeout(() => void readAll(), rest_ms);
    return () => {
      isLeft = true;
      clearTimeout(timer);
    };
  }, [asked, isHeard, rest_ms, outbox, queries, slug]);
}

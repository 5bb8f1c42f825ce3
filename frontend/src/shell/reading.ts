/** The read cache: TanStack's, kept on the phone, told what the outbox has done. */
import { QueryCache, QueryClient } from "@tanstack/preact-query";
import { ProblemError, isRecord } from "../api/problem";
import { WRITE_EVERY_MS } from "../offline/cache";
import type { Outbox } from "../offline/outbox";

/** Raise it when the shape of any answer changes, so that no phone draws an old shape with new code. */
export const SHAPES_VERSION = "3";
const DAY_MS = 24 * 60 * 60_000;
export const KEPT_FOR_MS = 30 * DAY_MS;

export function createReading(onProblem: (error: ProblemError) => void): QueryClient {
  const queryCache = new QueryCache({
    onError: (error) => {
      if (error instanceof ProblemError) onProblem(error);
    },
  });
  return new QueryClient({
    queryCache,
    defaultOptions: {
      queries: {
        // The phone's own idea of being online is often wrong; asking is the only test.
        networkMode: "always",
        staleTime: 30_000,
        // Not thirty days: a browser's timer of more than 2^31 ms (24.8 days) goes off at once, and the rows with it.
        gcTime: Infinity,
        retry: (tries, error) => !(error instanceof ProblemError) && tries < 1,
        retryDelay: 1_500,
      },
    },
  });
}

/** Rows heard once are kept even when the last asking failed: that is when they are needed. What letters found is asked anew. */
export function isWorthKeeping({ queryKey, state }: { queryKey: readonly unknown[]; state: { data?: unknown; dataUpdatedAt: number } }): boolean {
  const isAsked = queryKey.some((part) => typeof part === "string" && part.startsWith("search/"));
  return !isAsked && state.data !== undefined && Date.now() - state.dataUpdatedAt < KEPT_FOR_MS;
}

function seqOf(data: unknown): number | null {
  return isRecord(data) && typeof data["journal_seq"] === "number" ? data["journal_seq"] : null;
}

/** Rows heard longer ago are shown with their age, and no longer have acts laid over them. */
const OVERLAID_FOR_MS = 2 * DAY_MS;

/** What was read is on the phone a second later; an act is forgotten only when a page opened anew would show it too. */
export const FORGET_AFTER_MS = 3 * WRITE_EVERY_MS;

/** Ask again after every drain, and forget heard acts once all that is kept shows them. Returns how to stop. */
export function followOutbox(reading: QueryClient, outbox: Outbox, slug: string): () => void {
  let wasSending = false;
  const stopOutbox = outbox.subscribe(() => {
    const { isSending } = outbox.state();
    if (wasSending && !isSending) void reading.invalidateQueries({ queryKey: [slug] });
    wasSending = isSending;
  });
  const cache = reading.getQueryCache();
  let forgetting: ReturnType<typeof setTimeout> | undefined;
  const stopCache = cache.subscribe((event) => {
    if (event.type !== "updated" || event.action.type !== "success") return;
    const since = Date.now() - OVERLAID_FOR_MS;
    const recent = cache.findAll({ queryKey: [slug] }).filter((query) => query.state.dataUpdatedAt >= since);
    const seqs = recent.map((query) => seqOf(query.state.data)).filter((seq) => seq !== null);
    if (seqs.length === 0) return;
    const shown = Math.min(...seqs);
    clearTimeout(forgetting);
    forgetting = setTimeout(() => void outbox.forgetHeard(slug, shown, new Date(since)), FORGET_AFTER_MS);
  });
  return () => {
    clearTimeout(forgetting);
    stopOutbox();
    stopCache();
  };
}

/** Read a screen of the studio: the last known at once, then what the studio says now. */
import { useQuery, useQueryClient } from "@tanstack/preact-query";
import { useCallback, useEffect, useState } from "preact/hooks";
import { get } from "../../api/client";
import { getEvery } from "../../api/pages";
import type { Page } from "../../api/pages";
import { OfflineError, ProblemError } from "../../api/problem";
import type { Loadable } from "../../domain/loadable";
import { studioPath, useSession } from "./session";
import { useOutboxState } from "./use-outbox";

export type Failure = ProblemError | OfflineError;
export type Screen<Value> = Loadable<Value, Failure>;

const SLOW_MS = 2_000;
/** Older rows say when they were heard. Longer than the time between two askings. */
const FRESH_MS = 90_000;

export interface ScreenOptions {
  /** Ask again while the screen is open. [s] */
  every_s?: number;
}

/** `path` is under the studio and is also the key: `bench/`, `pieces/…/`. */
export function useScreen<Value>(path: string, options: ScreenOptions = {}): Screen<Value> & { again: () => void } {
  return useRead<Value>(path, options, get);
}

/** A list with the rows of all its pages. */
export function useWholeList<Value extends Page<unknown>>(path: string, options: ScreenOptions = {}): Screen<Value> & { again: () => void } {
  return useRead<Value>(path, options, getEvery);
}

type Read<Value> = (path: string, signal?: AbortSignal) => Promise<Value>;

function useRead<Value>(path: string, { every_s = 60 }: ScreenOptions, read: Read<Value>): Screen<Value> & { again: () => void } {
  const { slug } = useSession().membership.studio;
  const { isSending } = useOutboxState();
  const isSlow = useSlow(path);
  const query = useQuery<Value, Failure>({
    queryKey: [slug, path],
    queryFn: ({ signal }) => read(studioPath(slug, path), signal),
    // A snapshot taken half-way through the queue would show half of what was done.
    enabled: !isSending,
    refetchInterval: every_s * 1000,
  });
  const { refetch } = query;
  const queries = useQueryClient();
  const again = useCallback((): void => {
    // Asked for and then left, it is asked again by the next screen that shows it.
    void queries.invalidateQueries({ queryKey: [slug, path], exact: true, refetchType: "none" });
    void refetch();
  }, [queries, slug, path, refetch]);
  if (query.data !== undefined) {
    const isFresh = query.error === null && Date.now() - query.dataUpdatedAt < FRESH_MS;
    return { state: "ready", value: query.data, heardAt: new Date(query.dataUpdatedAt), isFresh, again };
  }
  if (query.error) return { state: "failed", failure: query.error, again };
  return { state: "loading", isSlow, again };
}

/** True once two seconds have gone by without an answer. */
function useSlow(path: string): boolean {
  const [slowPath, setSlowPath] = useState<string | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => { setSlowPath(path); }, SLOW_MS);
    return () => { clearTimeout(timer); };
  }, [path]);
  return slowPath === path;
}

import { useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { OrderTold } from "../../api/shapes-orders";
import { studioPath, useSession } from "../common/session";
import { useScreen } from "../common/use-screen";
import type { Failure } from "../common/use-screen";
import { filtered, pathUnder } from "./story-view";
import type { StoryFilter } from "./story-view";

export interface Story {
  rows: readonly OrderTold[];
  /** The next older page, if there is one. */
  next: string | null;
  /** Only what was heard before is shown: the studio has not answered for this filter. */
  isPartial: boolean;
  failure: Failure | null;
  isLoading: boolean;
}

export function useFilter(): [StoryFilter, (filter: StoryFilter) => void] {
  return useState<StoryFilter>("all");
}

/** The first page of a filter; until it is heard, the rows of *all* that fit it. */
export function useStory(orderId: string, filter: StoryFilter): Story {
  const path = (wanted: StoryFilter): string => `commissions/${orderId}/history/?filter=${wanted}`;
  const all = useScreen<Page<OrderTold>>(path("all"));
  const own = useScreen<Page<OrderTold>>(path(filter));
  if (own.state === "ready") return { rows: own.value.results, next: own.value.next, isPartial: false, failure: null, isLoading: false };
  const rows = all.state === "ready" ? filtered(all.value.results, filter) : [];
  return { rows, next: null, isPartial: all.state === "ready", failure: own.state === "failed" ? own.failure : null, isLoading: own.state === "loading" };
}

/** Where the studio gives the whole story, or a filter of it, as a table. */
export function useTable(orderId: string): (filter: StoryFilter) => string {
  const { slug } = useSession().membership.studio;
  return (filter) => studioPath(slug, `commissions/${orderId}/history.csv?filter=${filter}`);
}

/** One older page, read and kept like any screen. */
export function useOlder(address: string): Story {
  const { slug } = useSession().membership.studio;
  const screen = useScreen<Page<OrderTold>>(pathUnder(studioPath(slug, ""), address), { every_s: 600 });
  if (screen.state === "ready") return { rows: screen.value.results, next: screen.value.next, isPartial: false, failure: null, isLoading: false };
  return { rows: [], next: null, isPartial: false, failure: screen.state === "failed" ? screen.failure : null, isLoading: screen.state === "loading" };
}

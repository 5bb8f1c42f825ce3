/** A long list comes in pages; a screen that is to work without signal needs all of it. */
import { get } from "./client";

export interface Page<Row> {
  results: Row[];
  next: string | null;
}

/** A studio has tens of pages at most; more would be a server that leads in a circle. */
const MOST = 40;

/** The first page with the rows of every later one; whatever else the first says stays. */
export async function getEvery<Answer extends Page<unknown>>(path: string, signal?: AbortSignal): Promise<Answer> {
  const first = await get<Answer>(path, signal);
  const results = [...first.results];
  let next = first.next;
  for (let pages = 1; next !== null && pages < MOST; pages += 1) {
    const page: Page<unknown> = await get<Page<unknown>>(next, signal);
    results.push(...page.results);
    next = page.next;
  }
  return { ...first, results, next };
}

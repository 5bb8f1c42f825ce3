/** Numbers lent to this phone, so that two phones without signal never cut the same mark. Kept per studio, device and series. */
import { answered, inside } from "./db";

export interface Lent {
  first: number;
  last: number;
  /** The first not yet cut. */
  next: number;
}

/** `T07`: the letters of the series and its counter, of two figures at the least. */
export function markOf(series: string, counter: number): string {
  return `${series}${String(counter).padStart(2, "0")}`;
}

export function left(lent: readonly Lent[]): number {
  return lent.reduce((sum, { next, last }) => sum + Math.max(0, last - next + 1), 0);
}

/** The next marks, without taking them; fewer than `count` when fewer are left. */
export function peek(series: string, lent: readonly Lent[], count: number): string[] {
  const counters = lent.flatMap(({ next, last }) => Array.from({ length: Math.max(0, Math.min(count, last - next + 1)) }, (_, place) => next + place));
  return counters.slice(0, count).map((counter) => markOf(series, counter));
}

/** What is left once `count` have been cut, in the order lent. */
export function without(lent: readonly Lent[], count: number): Lent[] {
  let owed = count;
  return lent.flatMap((block) => {
    const cut = Math.max(0, Math.min(owed, block.last - block.next + 1));
    owed -= cut;
    const next = block.next + cut;
    return next > block.last ? [] : [{ ...block, next }];
  });
}

export function keyOf(slug: string, deviceId: string, series: string): string {
  return `numbers:${slug}:${deviceId}:${series}`;
}

async function change(db: IDBDatabase, key: string, work: (lent: Lent[]) => Lent[]): Promise<Lent[]> {
  return inside(db, "kept", "readwrite", async (table) => {
    // Written by this function alone.
    const lent = ((await answered(table.get(key))) as Lent[] | undefined) ?? [];
    const after = work(lent);
    await answered(table.put(after, key));
    return after;
  });
}

export async function readLent(db: IDBDatabase, key: string): Promise<Lent[]> {
  return change(db, key, (lent) => lent);
}

/** Add a block the studio lent; the same block twice is one. */
export async function keepLent(db: IDBDatabase, key: string, first: number, last: number): Promise<Lent[]> {
  return change(db, key, (lent) => (lent.some((block) => block.first === first) ? lent : [...lent, { first, last, next: first }]));
}

/** Cut the next `count` marks, in one transaction: two tabs never cut the same. Fewer when fewer are left. */
export async function takeMarks(db: IDBDatabase, key: string, series: string, count: number): Promise<string[]> {
  let marks: string[] = [];
  await change(db, key, (lent) => {
    marks = peek(series, lent, count);
    return without(lent, marks.length);
  });
  return marks;
}

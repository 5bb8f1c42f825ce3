import "fake-indexeddb/auto";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Outbox } from "../offline/outbox";
import { bench } from "../offline/outbox-bench";
import { createReading, followOutbox, FORGET_AFTER_MS, isWorthKeeping } from "./reading";

describe("followOutbox", () => {
  let outbox: Outbox;
  beforeEach(async () => {
    ({ outbox } = await bench());
  });
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it("forgets heard acts only when what shows them has had time to be kept", async () => {
    const forgotten: number[] = [];
    const watched = { ...outbox, forgetHeard: (_slug: string, seq: number) => Promise.resolve(void forgotten.push(seq)) };
    const reading = createReading(() => undefined);
    const stop = followOutbox(reading, watched, "yard");

    await reading.fetchQuery({ queryKey: ["yard", "bench/"], queryFn: () => Promise.resolve({ journal_seq: 7 }) });
    expect(forgotten).toEqual([]);
    vi.advanceTimersByTime(FORGET_AFTER_MS);

    expect(forgotten).toEqual([7]);
    stop();
  });
});

describe("isWorthKeeping", () => {
  it("keeps screens that were heard, and not what letters found", () => {
    const state = { data: { results: [] }, dataUpdatedAt: Date.now() };

    expect(isWorthKeeping({ queryKey: ["yard", "pieces/"], state })).toBe(true);
    expect(isWorthKeeping({ queryKey: ["yard", "search/?q=t0"], state })).toBe(false);
    expect(isWorthKeeping({ queryKey: ["yard", "pieces/"], state: { dataUpdatedAt: 0 } })).toBe(false);
  });
});

import { describe, expect, it } from "vitest";
import { uuid7 } from "./ids";
import { unseenBy } from "./kept-act";
import type { KeptAct } from "./kept-act";

const kept = (id: string, more: Partial<KeptAct> = {}): KeptAct => ({
  order: 1, id, username: "nell", slug: "barn", path: "/", body: { id }, verb: "demoulded", about: {}, words: "", creates: [],
  photo: null, made_at: "2026-10-31T09:04:00Z", state: "waiting", tries: 0, waitUntil: 0, isWaitAsked: false, seq: null,
  problem: null, ...more,
});
const ids = (acts: KeptAct[]): string[] => acts.map((act) => act.id);

describe("unseenBy", () => {
  it("leaves out what the snapshot shows and what was not taken", () => {
    const acts = [
      kept("waits"),
      kept("in it", { state: "heard", seq: 10 }),
      kept("after it", { state: "heard", seq: 11 }),
      kept("parked", { state: "parked" }),
    ];

    expect(ids(unseenBy(10, acts))).toEqual(["waits", "after it"]);
  });

  it("cancels an act with its own undoing", () => {
    const acts = [kept("a"), kept("undo", { verb: "retracted", body: { corrects: "a" } })];

    expect(unseenBy(0, acts)).toEqual([]);
  });

  it("keeps an undoing of something the snapshot already shows", () => {
    const acts = [kept("a", { state: "heard", seq: 5 }), kept("undo", { verb: "retracted", body: { corrects: "a" } })];

    expect(ids(unseenBy(5, acts))).toEqual(["undo"]);
  });
});

describe("uuid7", () => {
  // The example of RFC 9562, appendix A.6: 2022-02-22 14:22:22.00 GMT-05:00 is 017F22E279B0.
  it("carries its time, version and variant", () => {
    expect(uuid7(1_645_557_742_000)).toMatch(/^017f22e2-79b0-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  });

  it("is never the same twice", () => {
    expect(new Set(Array.from({ length: 1000 }, () => uuid7(1))).size).toBe(1000);
  });
});

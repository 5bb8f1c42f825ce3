import { describe, expect, it } from "vitest";
import { choosable, chosenOf, nextKey, placeOf } from "./bench-choice";
import { overlay } from "./bench-overlay";
import type { BenchView } from "./bench-overlay";
import { benchAnswer, joinRow, kept, mouldRow, row } from "./bench-sample";

const view = (more = {}, acts = [] as ReturnType<typeof kept>[]): BenchView => overlay(benchAnswer(more), acts);

describe("the chosen line", () => {
  it("is the first that wants a hand", () => {
    expect(chosenOf(view(), null)?.key).toBe("part-T26");
  });

  it("stays under the hand when another row comes in above it", () => {
    const above = view({ look_now: [row("Z99"), row("T26"), row("J08")] });

    expect(chosenOf(above, "part-J08")?.key).toBe("part-J08");
  });

  it("falls to a join, then to a mould that may be pressed, when no mould asks", () => {
    expect(chosenOf(view({ look_now: [], join_today: [joinRow("S04")] }), null)?.key).toBe("piece-S04");
    expect(chosenOf(view({ look_now: [], press_next: [mouldRow("M11", { may_press: false }), mouldRow("M09")] }), null)?.key).toBe("set-M09");
  });

  it("is nothing on an empty bench", () => {
    expect(chosenOf(view({ look_now: [], later_today: [], press_next: [] }), null)).toBeNull();
  });

  it("is never a line with two stories or one already answered", () => {
    const lines = choosable(view({ look_now: [row("T18", { clash_id: "c1" }), row("T26")] }, [kept("not_yet", { part_id: "part-T26" })]));

    expect(lines.map((line) => line.key)).toEqual(["part-T25", "set-M09"]);
  });
});

describe("the next line", () => {
  it("is the one below", () => {
    expect(nextKey(view(), "part-T26")).toBe("part-J08");
  });

  it("goes back to what was passed over, then nowhere", () => {
    expect(nextKey(view(), "part-L08")).toBe("part-T26");
    expect(nextKey(view({ look_now: [row("T26")] }), "part-T26")).toBeNull();
    expect(nextKey(view(), "part-unknown")).toBeNull();
  });

  it("knows where a line stood", () => {
    expect(placeOf(view(), "part-L08")).toEqual({ block: "lookNow", place: 2 });
    expect(placeOf(view(), "part-T25")).toEqual({ block: "laterToday", place: 0 });
  });
});

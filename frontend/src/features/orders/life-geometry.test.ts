import { describe, expect, it } from "vitest";
import type { PieceLife } from "../../api/shapes-orders";
import { barOf, drawLives } from "./life-geometry";
import type { LifePicture, Strip } from "./life-geometry";
import { livesAnswer } from "./order-sample";

const around = { width: 328, rem: 16, now: new Date("2026-10-31T09:00:00Z"), zone: "Europe/London" };

function drawn(lives: readonly PieceLife[] = livesAnswer().pieces): LifePicture {
  const picture = drawLives(lives, around);
  if (!picture) throw new Error("There is something to draw.");
  return picture;
}

function strip(mark: string, picture = drawn()): Strip {
  const found = picture.strips.find((one) => one.mark === mark);
  if (!found) throw new Error(`No strip ${mark}.`);
  return found;
}

describe("a strip", () => {
  it("shows the job in its order: mould, out, drying covered, open, waiting, kiln, waiting", () => {
    expect(strip("S02").bars.map((bar) => bar.kind)).toEqual(["mould", "out", "covered", "open", "waiting", "kiln", "waiting"]);
  });

  it("joins its bars without gaps and ends at now while the piece lives", () => {
    const { bars } = strip("S02");
    bars.slice(1).forEach((bar, place) => { expect(bar.from).toBeCloseTo(bars[place]?.to ?? 0, 0); });
    expect(bars.at(-1)?.to).toBe(drawn().nowX);
  });

  it("crosses out what was lost, where it was lost, and puts nothing ahead of it", () => {
    const { cross, ahead, bars } = strip("S01");
    expect(cross).toBe(bars.at(-1)?.to);
    expect(ahead).toBeNull();
  });

  it("still shows what was pressed this morning", () => {
    const [bar] = strip("S04").bars;
    expect((bar?.to ?? 0) - (bar?.from ?? 0)).toBeGreaterThanOrEqual(4);
  });

  it("dots what is to come from now to the edge", () => {
    const { ahead } = strip("S02");
    expect(ahead?.from).toBeGreaterThan(drawn().nowX);
    expect(ahead?.to).toBeLessThanOrEqual(around.width);
  });

  it("ends where the piece was handed over", () => {
    const [first] = livesAnswer().pieces;
    const life = { ...first, id: "x", mark: "X", line_id: "l1", spans: [
      { stage: "finished", state: "packed", cover: "", from_at: "2026-10-10T09:00:00Z", until_at: "2026-10-20T09:00:00Z" },
      { stage: "delivered", state: "delivered", cover: "", from_at: "2026-10-20T09:00:00Z", until_at: null },
    ] };
    const { end, cross, ahead, bars } = strip("X", drawn([life]));
    expect(end).toBe(bars.at(-1)?.to);
    expect([cross, ahead]).toEqual([null, null]);
  });
});

describe("the days", () => {
  it("begin on the Monday before the first press, and name the month where it changes", () => {
    const { weeks, left } = drawn();
    expect(weeks[0]).toEqual({ x: left, words: "5 Oct" });
    expect(weeks.slice(1).every((week) => !week.words.includes("Oct"))).toBe(true);
  });

  it("leave room for the word now", () => {
    const { weeks, nowX } = drawn();
    expect(weeks.filter((week) => week.words !== "").every((week) => nowX - week.x > 30)).toBe(true);
  });

  it("cover an order of a whole year without the names touching", () => {
    const [first] = livesAnswer().pieces;
    const old: PieceLife = { id: "x", mark: "X", line_id: "l1", spans: [{ stage: "drying", state: "drying", cover: "", from_at: "2025-10-01T09:00:00Z", until_at: null }] };
    const { weeks } = drawn(first ? [first, old] : []);
    weeks.slice(1).forEach((week, place) => { expect(week.x - (weeks[place]?.x ?? 0)).toBeGreaterThan(30); });
  });
});

describe("what is drawn", () => {
  it("is nothing while no clay was pressed", () => {
    expect(drawLives([], around)).toBeNull();
    expect(drawLives([{ id: "x", mark: "X", line_id: "l1", spans: [{ stage: "pressing", state: "to_press", cover: "", from_at: "2026-10-01T09:00:00Z", until_at: null }] }], around)).toBeNull();
  });

  it("tells covered from open drying by the cover alone", () => {
    expect(barOf({ state: "drying", cover: "open" })).toBe("open");
    expect(barOf({ state: "drying", cover: "loose" })).toBe("covered");
    expect(barOf({ state: "to_press", cover: "" })).toBeNull();
  });

  it("sets many pieces closer together", () => {
    const [first] = livesAnswer().pieces;
    if (!first) throw new Error("The sample has a piece.");
    const many = drawn(Array.from({ length: 28 }, (_, place) => ({ ...first, id: String(place), mark: `T${String(place)}` })));
    expect((many.strips[1]?.y ?? 0) - (many.strips[0]?.y ?? 0)).toBeLessThan(strip("S02").y - strip("S01").y);
  });
});

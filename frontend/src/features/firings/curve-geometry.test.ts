import { describe, expect, it } from "vitest";
import { drawCurve, gapOf, stretches, usedReadings } from "./curve-geometry";
import { event, load, reading } from "./firing-sample";

const AROUND = { width: 360, rem: 16, unit: "c", now: new Date("2026-10-31T09:00:00Z") } as const;
const CURVE = [{ elapsed_h: 0, planned_c: 20 }, { elapsed_h: 10, planned_c: 1020 }];
const times = { ...load().times, started_at: "2026-10-30T17:30:00Z" };
const firing = (more: Parameters<typeof load>[0] = {}) => load({ state: "cooling", times, curve: CURVE, ...more });

describe("drawCurve", () => {
  it("has nothing to draw before the first reading without a programme", () => {
    expect(drawCurve(load(), AROUND)).toBeNull();
  });

  it("sets a square on the line for each reading that counts, and none for one asked about", () => {
    const picture = drawCurve(firing({ readings: [reading(0, 20), reading(5, 500), reading(6, 2232, { use: "asked", instead_c: 1222 })] }), AROUND);

    expect(picture?.squares).toHaveLength(2);
    expect(picture?.known).toHaveLength(1);
    expect(picture?.grid.at(-1)?.words).toBe("1000");
  });

  it("lies between the programme's corners on one scale, in °C and in °F alike", () => {
    const readings = [reading(0, 20), reading(5, 520)];
    const [celsius, fahrenheit] = (["c", "f"] as const).map((unit) => drawCurve(firing({ readings }), { ...AROUND, unit }));

    expect(celsius?.squares[1]?.x).toBe(fahrenheit?.squares[1]?.x);
    expect(fahrenheit?.unit).toBe("°F");
    // 1020 °C is 1868 °F: one line at 1000 °F, where °C has two at 500 and 1000.
    expect(fahrenheit?.grid.map(({ words }) => words)).toEqual(["0", "1000"]);
    expect(celsius?.grid.map(({ words }) => words)).toEqual(["0", "500", "1000"]);
  });

  it("marks the clock change at the hours that had really passed", () => {
    const change = { at: "2026-10-30T22:30:00Z", words: "clocks go back" };
    const picture = drawCurve(firing({ readings: [reading(0, 20), reading(10, 900)], clock_change: change }), AROUND);
    const [left, right] = [picture?.plot.left ?? 0, picture?.plot.right ?? 0];

    expect(picture?.clockChange).toEqual({ x: (left + right) / 2, words: "clocks go back", anchor: "start" });
  });

  it("names the worst gap under its bar, longest of all", () => {
    const readings = [reading(0, 16, { set_c: 20 }), reading(5, 496, { set_c: 520 })];
    const picture = drawCurve(firing({ readings, worst_gap: { reading_id: "r5", gap_c: -24 } }), AROUND);
    const heights = picture?.gap?.bars.map((bar) => bar.height) ?? [];

    expect(picture?.gap?.worst?.words).toBe("24 under");
    expect(heights[1]).toBeGreaterThan(heights[0] ?? Infinity);
    expect(drawCurve(firing({ readings, worst_gap: { reading_id: "r5", gap_c: -24 } }), { ...AROUND, unit: "f" })?.gap?.worst?.words).toBe("43 under");
  });

  it("shows now only while it fires", () => {
    const readings = [reading(0, 20), reading(4, 400)];
    const now = new Date("2026-10-30T22:30:00Z");

    expect(drawCurve(firing({ readings, state: "firing" }), { ...AROUND, now })?.nowX).toBeGreaterThan(0);
    expect(drawCurve(firing({ readings, state: "unloaded" }), { ...AROUND, now })?.nowX).toBeNull();
  });
});

describe("stretches", () => {
  it("breaks the line where power was lost, and keeps the reading of that minute before it", () => {
    const placed = usedReadings([reading(4, 861), reading(4.5, 868), reading(6, 702)]);
    const events = [event("stopped", reading(4.5, 0).taken_at)];

    expect(stretches(placed, events).map((one) => one.length)).toEqual([2, 1]);
    expect(stretches(placed, [event("stopped", reading(4.5, 0).taken_at, { is_taken_back: true })])).toHaveLength(1);
  });
});

describe("gapOf", () => {
  it("is against the set point that was written, else the programme at that hour, else nothing", () => {
    expect(gapOf(reading(5, 500, { set_c: 510 }), CURVE)).toBe(-10);
    expect(gapOf(reading(5, 500), CURVE)).toBe(-20);
    expect(gapOf(reading(12, 500), CURVE)).toBeNull();
  });
});

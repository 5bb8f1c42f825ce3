import { describe, expect, it } from "vitest";
import type { DryingAnswer } from "../../api/shapes-pieces";
import { drawDrying, PLOT_PX } from "./drying-geometry";

const NOW = new Date("2026-10-31T09:00:00Z");
const at = (hours: number): string => new Date(NOW.getTime() + hours * 3_600_000).toISOString();
const AROUND = { width: 328, rem: 16, now: NOW, zone: "Europe/London" };

/** Made up: falls evenly from 1 to 0 over 120 h, 48 h of them gone. */
function drying(change: Partial<DryingAnswer> = {}): DryingAnswer {
  const hours = Array.from({ length: 21 }, (_, step) => -48 + step * 6);
  const left = (hour: number, pace: number): number => Math.max(0, 1 - ((hour + 48) / 120) * (hour > 0 ? pace : 1));
  return {
    at: at(0), journal_seq: 1, computed_at: at(0), verdict: "Turning", sentence: "A studio guess.",
    curve: {
      t_at: hours.map(at), known_points: 9,
      p10: hours.map((hour) => left(hour, 1.2)), p50: hours.map((hour) => left(hour, 1)), p90: hours.map((hour) => left(hour, 0.8)),
    },
    windows: {
      demould: { opens: null, closes: null }, join: { opens: null, closes: null },
      shrinkage_ended: { p10: null, p50: null, p90: null, p_never: 0 },
      bisque: { p10: at(40), p50: at(50), p90: at(60), p_never: 0 },
    },
    covering: { cracking: null, steps: [], meeting: null, thin: null }, weighed: null,
    unreachable: [], evidence: [], inputs: {}, assumed: [], sources: [], confidence: { basis: "guess", checks: 0 },
    ...change,
  };
}

describe("drawDrying", () => {
  it("draws nothing where nothing has been reckoned", () => {
    expect(drawDrying(drying({ curve: null }), AROUND)).toBeNull();
    expect(drawDrying(drying({ curve: { t_at: [], p10: [], p50: [], p90: [], known_points: 0 } }), AROUND)).toBeNull();
  });

  it("lets the line of what happened end where the guess begins, at now", () => {
    const picture = drawDrying(drying(), AROUND);

    const end = picture?.known.split("L").at(-1);
    const start = picture?.middle.slice(1).split("L")[0];
    expect(end).toBe(start);
    expect(Number(end?.split(" ")[0])).toBeCloseTo(picture?.nowX ?? NaN, 1);
  });

  it("keeps the band inside the plot and round the middle line", () => {
    const picture = drawDrying(drying(), AROUND);
    const points = picture?.band.replaceAll(/[MZ]/g, "").split("L").map((pair) => pair.split(" ").map(Number)) ?? [];

    expect(points.length).toBeGreaterThan(10);
    for (const [x = NaN, y = NaN] of points) {
      expect(x).toBeGreaterThanOrEqual(picture?.plot.left ?? Infinity);
      expect(x).toBeLessThanOrEqual(picture?.plot.right ?? -Infinity);
      expect(y).toBeGreaterThanOrEqual(picture?.plot.top ?? Infinity);
      expect(y).toBeLessThanOrEqual(picture?.plot.bottom ?? -Infinity);
    }
  });

  it("puts weighings and touch on the line, and leaves out what lies outside", () => {
    const picture = drawDrying(drying({
      evidence: [
        { kind: "weighing", at: at(-24), member: "Jun", mass_g: 821 },
        { kind: "check", at: at(-1.25), member: "Jun", words: "soft" },
        { kind: "cover", at: at(-2), member: "Jun", words: "loose" },
        { kind: "weighing", at: at(-900), member: "Jun", mass_g: 990 },
      ],
    }), AROUND);

    expect(picture?.seen.map((one) => one.kind)).toEqual(["weighing", "check"]);
    // 24 of 120 h gone on the made-up line: 80 % is left.
    expect(picture?.seen[0]?.y).toBeCloseTo((picture?.plot.bottom ?? 0) - 0.8 * PLOT_PX, 0);
  });

  it("marks the likely days on the base with the middle guess inside them", () => {
    const { dry } = drawDrying(drying(), AROUND) ?? {};

    expect(dry?.left).toBeLessThan(dry?.tick ?? -1);
    expect(dry?.tick).toBeLessThan(dry?.right ?? -1);
  });

  it("never marks days that have gone by", () => {
    const at_hours = (p10: number, p90: number) => drawDrying(drying({ windows: { ...drying().windows, bisque: { p10: at(p10), p50: at(p10 + 1), p90: at(p90), p_never: 0 } } } as Partial<DryingAnswer>), AROUND);

    expect(at_hours(-30, 20)?.dry).toMatchObject({ left: at_hours(-30, 20)?.nowX, tick: null });
    expect(at_hours(-30, -2)?.dry).toBeNull();
  });

  it("gives no days where the piece does not come dry in this room", () => {
    const windows = { ...drying().windows, bisque: { p10: null, p50: null, p90: null, p_never: 0.95 } };

    expect(drawDrying({ ...drying(), windows } as DryingAnswer, AROUND)?.dry).toBeNull();
  });

  it("keeps its height and drops names of days when the text is twice the size", () => {
    const [plain, twice] = [drawDrying(drying(), AROUND), drawDrying(drying(), { ...AROUND, rem: 32 })];

    expect((twice?.plot.bottom ?? 0) - (twice?.plot.top ?? 0)).toBe(PLOT_PX);
    expect(twice?.days.length).toBeLessThan(plain?.days.length ?? 0);
    expect(twice?.days.some((mark) => mark.isToday)).toBe(true);
  });

  it("draws a lid over the times under a cover, the present one up to now", () => {
    const evidence = [
      { kind: "cover", at: at(-40), member: "Nell", words: "loose" }, { kind: "cover", at: at(-20), member: "Nell", words: "open" },
      { kind: "cover", at: at(-5), member: "Nell", words: "tucked" },
    ] as DryingAnswer["evidence"];

    const picture = drawDrying(drying({ evidence }), AROUND);

    expect(picture?.covers).toHaveLength(2);
    expect(picture?.covers[1]?.right).toBeCloseTo(picture?.nowX ?? NaN, 1);
  });

  it("stands a weighing where the scale says, beside the line", () => {
    const weighing = { kind: "weighing", at: at(-10), member: "Nell", mass_g: 500, water_left: 0.9 } as const;

    const [scale] = drawDrying(drying({ evidence: [weighing] }), AROUND)?.seen ?? [];
    const [line] = drawDrying(drying({ evidence: [{ ...weighing, water_left: null }] }), AROUND)?.seen ?? [];

    expect(scale?.y).toBeLessThan(line?.y ?? 0);
  });

  it("marks when it may be joined", () => {
    const window = { opens: { p10: at(2), p50: at(4), p90: at(6), p_never: 0 }, closes: { p10: at(12), p50: at(16), p90: at(20), p_never: 0 } };
    const windows = { ...drying().windows, join: window };

    const join = drawDrying({ ...drying(), windows } as DryingAnswer, AROUND)?.join;

    expect(join?.left).toBeGreaterThan(drawDrying(drying(), AROUND)?.nowX ?? Infinity);
    expect(join?.right).toBeGreaterThan(join?.left ?? Infinity);
  });
});

import { describe, expect, it } from "vitest";
import type { DryingAnswer } from "../../api/shapes-pieces";
import { wholeCurve } from "./whole-curve-data";

const at = (hours: number): string => new Date(Date.parse("2026-10-31T09:00:00Z") + hours * 3_600_000).toISOString();

/** Made up: three points of a curve, and what was seen between them. */
function drying(evidence: unknown[] = []): DryingAnswer {
  const curve = { t_at: [at(-10), at(0), at(10)], p10: [1, 0.4, 0.1], p50: [1, 0.5, 0.2], p90: [1, 0.6, 0.3], known_points: 2 };
  return { at: at(0), curve, evidence } as unknown as DryingAnswer;
}

describe("wholeCurve", () => {
  it("is nothing where nothing has been reckoned", () => {
    expect(wholeCurve({ ...drying(), curve: null })).toBeNull();
  });

  it("gives every series a value at each instant, in per cent", () => {
    const data = wholeCurve(drying());

    expect(data?.columns[1]).toEqual([100, 50, 20]);
    expect(data?.columns[2]).toEqual([100, 40, 10]);
    expect(new Set(data?.columns.map((column) => column.length))).toEqual(new Set([3]));
  });

  it("adds an instant for each look, a weighing by the scale and a touch on the line", () => {
    const data = wholeCurve(drying([
      { kind: "weighing", at: at(-5), member: "Nell", mass_g: 500, water_left: 0.8 },
      { kind: "check", at: at(-4), member: "Nell", words: "soft" },
    ]));

    expect(data?.columns[0]).toHaveLength(5);
    expect(data?.columns[4]).toEqual([null, 80, null, null, null]);
    expect(data?.columns[5]).toEqual([null, null, 70, null, null]);
  });

  it("tells the times under a cover", () => {
    const data = wholeCurve(drying([{ kind: "cover", at: at(-6), member: "Nell", words: "loose" }]));

    expect(data?.covers).toEqual([{ from: Date.parse(at(-6)) / 1000, to: Date.parse(at(0)) / 1000 }]);
  });
});

import { describe, expect, it } from "vitest";
import type { DryingAnswer } from "../../api/shapes-pieces";
import { askedOf, knownOf, NO_CHANGE } from "./what-if-asked";

const NOW = new Date("2026-10-31T09:00:00Z");
const ROOM = { air_c: 14, humidity_fraction: 0.66 };
// The rest of the answer is not read here.
const DRYING = {
  curve: { t_at: ["2026-10-30T09:00:00Z", "2026-10-31T09:00:00Z"], p10: [1, 0.5], p50: [1, 0.5], p90: [1, 0.5], known_points: 2 },
  inputs: { body: "porcelain", shape: "rod", thickest_mm: 12 },
  evidence: [
    { kind: "cover", at: "2026-10-30T15:00:00Z", member: "Jun", words: "loose" },
    { kind: "check", at: "2026-10-30T16:00:00Z", member: "Jun", words: "soft" },
  ],
} as unknown as DryingAnswer;

describe("knownOf", () => {
  it("takes the piece's own section, clay and covers, hours from its pressing", () => {
    expect(knownOf(DRYING, NOW)).toEqual({
      beganAt: new Date("2026-10-30T09:00:00Z"), clay: "porcelain", shape: "rod", thickest_mm: 12, covers: [{ from_h: 6, state: "loose" }], shutFrom_h: null, mould: null,
    });
  });

  it("begins now with an ordinary wall where there is no piece", () => {
    expect(knownOf(null, NOW)).toEqual({ beganAt: NOW, clay: "red_earthenware", shape: "flat", thickest_mm: 8, covers: [], shutFrom_h: null, mould: null });
  });

  it("leaves it in its mould until it first stood elsewhere", () => {
    const pressed = { ...DRYING, inputs: { ...DRYING.inputs, mould_free_water_fraction: 0.12 } };

    expect(knownOf(pressed, NOW).mould).toEqual({ free_water_fraction: 0.12, until_h: 6 });
  });
});

describe("askedOf", () => {
  it("asks for what is when nothing is changed", () => {
    const asked = askedOf(knownOf(DRYING, NOW), ROOM, NO_CHANGE, NOW);

    expect(asked).toMatchObject({ begins_at: "2026-10-30T09:00:00.000Z", clay: "porcelain", shape: "rod", thickest_mm: 12 });
    expect(asked.air_series).toEqual([{ from_h: 0, ...ROOM }]);
    expect(asked.covers).toEqual([{ from_h: 6, state: "loose" }]);
  });

  it("changes room and cover from now on, and leaves what was", () => {
    const other = { air_c: 20, humidity_fraction: 0.5 };

    const asked = askedOf(knownOf(DRYING, NOW), ROOM, { ...NO_CHANGE, air: other, cover: "open" }, NOW);

    expect(asked.air_series).toEqual([{ from_h: 0, ...ROOM }, { from_h: 24, ...other }]);
    expect(asked.covers).toEqual([{ from_h: 6, state: "loose" }, { from_h: 24, state: "open" }]);
  });

  it("changes the whole where the piece is begun now", () => {
    const other = { air_c: 20, humidity_fraction: 0.5 };

    const asked = askedOf(knownOf(null, NOW), ROOM, { air: other, cover: "sealed", thickest_mm: "3/8 in" }, NOW);

    expect(asked.air_series).toEqual([{ from_h: 0, ...other }]);
    expect(asked.covers).toEqual([{ from_h: 0, state: "sealed" }]);
    expect(asked.thickest_mm).toBe("3/8 in");
  });

  it("keeps a piece shut in its cupboard until it is put elsewhere, under its own cover again", () => {
    const moved = { ...DRYING, evidence: [...DRYING.evidence, { kind: "move", at: "2026-10-30T19:00:00Z", member: "Jun", words: "Damp cupboard" }] } as DryingAnswer;
    const known = knownOf(moved, NOW, true);

    const left = askedOf(known, ROOM, { ...NO_CHANGE, cover: "open" }, NOW);
    const taken = askedOf(known, ROOM, { ...NO_CHANGE, air: ROOM }, NOW);

    const shut = [{ from_h: 6, state: "loose" }, { from_h: 10, state: "sealed" }];
    expect(left.covers).toEqual(shut);
    expect(taken.covers).toEqual([...shut, { from_h: 24, state: "loose" }]);
  });
});

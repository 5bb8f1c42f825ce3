import { describe, expect, it } from "vitest";
import type { DryingAnswer, Evidence } from "../../api/shapes-pieces";
import { THIN } from "../../domain/format";
import { assumedWords, evidenceFacts, figuresOf, likely } from "./drying-words";

const LONDON = "Europe/London";
const NOW = new Date("2026-10-31T09:00:00Z");
const METRIC = { length: "mm", mass: "g", temperature: "c" } as const;

describe("likely", () => {
  it("names the days between which it is likely", () => {
    const quantiles = { p10: "2026-11-02T10:00:00Z", p50: "2026-11-03T10:00:00Z", p90: "2026-11-04T10:00:00Z", p_never: 0 };

    expect(likely(quantiles, NOW, LONDON)).toBe("Mon 2 to Wed 4 Nov");
  });

  it("never begins in the past", () => {
    const begun = { p10: "2026-10-29T10:00:00Z", p50: "2026-11-01T10:00:00Z", p90: "2026-11-04T10:00:00Z", p_never: 0 };

    expect(likely(begun, NOW, LONDON)).toBe("Sat 31 Oct to Wed 4 Nov");
    expect(likely({ ...begun, p50: "2026-10-29T10:00:00Z", p90: "2026-10-30T10:00:00Z" }, NOW, LONDON)).toBe("Likely by now");
  });

  it("names no day where most guesses never get there", () => {
    expect(likely({ p10: "2026-11-02T10:00:00Z", p50: null, p90: null, p_never: 0.6 }, NOW, LONDON)).toBeNull();
    expect(likely(null, NOW, LONDON)).toBeNull();
    expect(likely({ p10: "2026-11-02T10:00:00Z", p50: "2026-11-09T10:00:00Z", p90: null, p_never: 0.2 }, NOW, LONDON)).toBe("From Mon 2 Nov");
  });
});

describe("evidenceFacts", () => {
  it("gives the last touch, and the last weight beside the one before", () => {
    const evidence: Evidence[] = [
      { kind: "weighing", at: "2026-10-30T08:00:00Z", member: "Jun", mass_g: 821 },
      { kind: "check", at: "2026-10-31T07:45:00Z", member: "Jun", words: "leather hard" },
      { kind: "weighing", at: "2026-10-31T08:00:00Z", member: "Bram", mass_g: 783 },
    ];

    expect(evidenceFacts(evidence, METRIC, NOW, LONDON)).toEqual([
      { label: "touch", value: "Leather-hard", note: "Jun, 07:45" },
      { label: "weighed", value: `783${THIN}g`, note: `Bram, 08:00; 821${THIN}g yesterday, 08:00` },
    ]);
    expect(evidenceFacts([], METRIC, NOW, LONDON)).toEqual([]);
  });
});

describe("figuresOf", () => {
  it("says now and the coming mornings, and stops where the curve does", () => {
    const times = Array.from({ length: 13 }, (_, place) => new Date(NOW.getTime() + (place - 6) * 6 * 3_600_000).toISOString());
    const falling = times.map((_, place) => 1 - place / 12);
    const curve = { t_at: times, p10: falling.map((value) => value * 0.9), p50: falling, p90: falling, known_points: 7 };
    // The rest of the answer is not read here.
    const drying = { curve, evidence: [] } as unknown as DryingAnswer;

    const { ahead } = figuresOf(drying, NOW, LONDON);

    expect(ahead.map(({ at }) => at.toISOString())).toEqual(["2026-10-31T09:00:00.000Z", "2026-11-01T09:00:00.000Z"]);
    expect(ahead[0]?.middle).toBeCloseTo(0.5);
    expect(ahead[0]?.low).toBeCloseTo(0.45);
  });
});

describe("assumedWords", () => {
  it("says gaps between readings, and passes on what it does not know", () => {
    expect(assumedWords(["air_gap", "mould_water", "new_thing"])).toBe("air between readings more than 12 hours apart; how wet the mould was; new thing");
  });
});

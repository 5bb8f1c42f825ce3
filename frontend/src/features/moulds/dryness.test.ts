import { describe, expect, it } from "vitest";
import { barOf, basisWords, nextPressWords } from "./dryness";

const LIMITS = { word: "usable", dryBelow: 0.05, usableBelow: 0.15 } as const;

describe("barOf", () => {
  it("puts the limits and the water on one scale", () => {
    const bar = barOf({ ...LIMITS, fraction: 0.1275 }, 350);

    expect([bar.dry, bar.usable, bar.water]).toEqual([50, 150, 127.5]);
  });

  it("grows its scale for a soaked mould, and stays inside its box", () => {
    const bar = barOf({ ...LIMITS, word: "usable", fraction: 0.7 }, 350);

    expect(bar.water).toBeLessThanOrEqual(341);
    expect(bar.usable).toBeLessThan(bar.water);
    expect(barOf({ ...LIMITS, fraction: 0 }, 350).water).toBe(9);
    expect(barOf({ ...LIMITS, fraction: 2 }, 350).label).toBeLessThanOrEqual(326);
  });
});

describe("words", () => {
  const dryness = { word: "usable", basis: "weighed", free_water_fraction: 0.13, presses_since_dry: 2, presses_left: 1 } as const;

  it("count the press that would come next", () => {
    expect(nextPressWords(dryness)).toBe("third press since dry: slower");
    expect(nextPressWords({ ...dryness, word: "dry", presses_since_dry: 0 })).toBe("first press since dry");
  });

  it("say what the dryness rests on", () => {
    expect(basisWords({ ...dryness, basis: "reckoned" })).toBe("by weight, with 2 presses reckoned in");
    expect(basisWords({ ...dryness, basis: "presses", presses_since_dry: 1 })).toBe("only counted: 1 press since dry");
  });
});

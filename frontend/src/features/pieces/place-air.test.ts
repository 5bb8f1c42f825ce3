import { describe, expect, it } from "vitest";
import { airOf, AIRS } from "./place-air";

describe("airOf", () => {
  it("says nothing where nobody said how the air moves", () => {
    expect(airOf(null)).toBeNull();
  });

  it("gives each word back for its own figure, and the nearest for another", () => {
    expect(AIRS.map((one) => airOf(one.air_m_s))).toEqual(["still", "draught", "fan"]);
    expect([airOf(0.1), airOf(0.5), airOf(3)]).toEqual(["still", "draught", "fan"]);
  });
});

import { describe, expect, it } from "vitest";
import { askedOf, knownOf, NO_CHANGE } from "./what-if-asked";

const NOW = new Date("2026-10-31T09:00:00Z");
const ROOM = { air_c: 14, humidity_fraction: 0.66 };

describe("askedOf", () => {
  it("asks for an ordinary wall that is pressed now when nothing is changed", () => {
    const asked = askedOf(knownOf(NOW), ROOM, NO_CHANGE);

    expect(asked).toMatchObject({ begins_at: "2026-10-31T09:00:00.000Z", clay: "red_earthenware", shape: "flat", thickest_mm: 8, air: ROOM });
    expect(asked).not.toHaveProperty("cover");
  });

  it("changes air, cover and thickness, as typed", () => {
    const other = { air_c: 20, humidity_fraction: 0.5 };

    const asked = askedOf(knownOf(NOW), ROOM, { air: other, cover: "sealed", thickest_mm: "3/8 in" });

    expect(asked).toMatchObject({ air: other, cover: "sealed", thickest_mm: "3/8 in" });
  });
});

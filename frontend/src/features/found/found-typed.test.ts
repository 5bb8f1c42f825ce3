import { describe, expect, it } from "vitest";
import { emptyFound, foundAgain, foundFields } from "./found-typed";

const UNITS = { length: "mm", mass: "g", temperature: "c" } as const;
const typed = { ...emptyFound(), what: " square tile ", placeId: "d3", placeName: "Rack D3", x: "150", y: "150", looks: "bone_dry" as const };

describe("found ware", () => {
  it("is sent in millimetres, and in inches as they were typed", () => {
    expect(foundFields(typed, UNITS)).toMatchObject({ what: "square tile", x_mm: 150, height_mm: null, place_id: "d3", looks: "bone_dry" });
    expect(foundFields({ ...typed, x: "5 7/8" }, { ...UNITS, length: "in" }).x_mm).toBe("5 7/8 in");
  });

  it("stands in its form again as it was typed", () => {
    const again = foundAgain({ body: foundFields({ ...typed, y: "wide" }, UNITS), about: { place_name: "Rack D3" } }, UNITS);
    expect(again).toEqual({ ...typed, what: "square tile", y: "wide" });
  });

  it("names again the photos that went before it was not taken", () => {
    const again = foundAgain({ body: { ...foundFields(typed, UNITS), photo_ids: ["p1"] }, about: {} }, UNITS);

    expect(foundFields(again, UNITS)["photo_ids"]).toEqual(["p1"]);
    expect(foundFields(typed, UNITS)).not.toHaveProperty("photo_ids");
  });
});

import { describe, expect, it } from "vitest";
import { firstWords } from "./cautions";

describe("firstWords", () => {
  it("stops at the first pause, but not inside a figure", () => {
    expect(firstWords("Brown stain: gloves, and no dust.")).toBe("Brown stain");
    expect(firstWords("12.5 mm at its thickest; the studio’s limit is 12 mm.")).toBe("12.5 mm at its thickest");
    expect(firstWords("For display only, not for food.")).toBe("For display only");
    expect(firstWords("Wash your hands")).toBe("Wash your hands");
  });
});

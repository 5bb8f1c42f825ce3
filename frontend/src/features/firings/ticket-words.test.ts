import { describe, expect, it } from "vitest";
import { faultOf, mendedOf, toggled } from "./ticket-words";

describe("the ticket of ware fired again", () => {
  it("lets nothing mended stand only by itself", () => {
    const some = toggled(toggled(new Set(), "ground"), "glazed_thicker");

    expect([...some]).toEqual(["ground", "glazed_thicker"]);
    expect([...toggled(some, "nothing")]).toEqual(["nothing"]);
    expect([...toggled(new Set(["nothing" as const]), "washed")]).toEqual(["washed"]);
  });

  it("takes up what was kept of one not taken, and nothing it does not know", () => {
    expect(faultOf("crawled")).toBe("crawled");
    expect(faultOf(7)).toBeNull();
    expect([...mendedOf(["ground", "polished"])]).toEqual(["ground"]);
  });
});

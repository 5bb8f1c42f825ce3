import { describe, expect, it } from "vitest";
import { furtherOn, isPastHelper, mainStep, markOf, spotOf } from "./stage";

describe("mainStep", () => {
  it("follows the job", () => {
    const step = (state: string): string => {
      const main = mainStep(state, false);
      return main.kind === "spot" ? main.spot.state : main.kind;
    };
    const states = ["in_mould", "out", "joined", "drying", "bone_dry", "in_bisque", "bisqued", "glazed", "in_glaze", "glaze_fired", "checked", "packed", "delivered"];

    expect(states.map(step)).toEqual([
      "demould", "joined", "cover", "weigh", "in_bisque", "bisqued", "glazed", "in_glaze", "glaze_fired", "checked", "packed", "delivered", "none",
    ]);
  });

  it("has nothing to join where there is one part", () => {
    expect(mainStep("out", true)).toEqual({ kind: "cover" });
  });

  it("offers nothing for what waits or is lost", () => {
    expect(["to_press", "scrapped", "missing"].map((state) => mainStep(state, true).kind)).toEqual(["none", "none", "none"]);
  });
});

describe("stages", () => {
  it("know what lies further on", () => {
    expect(furtherOn("checked").map((spot) => spot.state)).toEqual(["packed", "delivered"]);
    expect(furtherOn("scrapped")).toEqual([]);
  });

  it("draw drying by its cover", () => {
    expect([markOf("drying", "open"), markOf("drying", "tucked"), markOf("in_glaze", "")]).toEqual(["open", "covered", "in_kiln"]);
  });

  it("leave what comes after bone dry to the maker", () => {
    const isPast = (state: string): boolean => isPastHelper(spotOf(state) ?? { stage: "", state, words: "" });

    expect(isPast("bone_dry")).toBe(false);
    expect(isPast("bisqued")).toBe(true);
  });
});

import { describe, expect, it } from "vitest";
import { THIN } from "../../domain/format";
import { loss, mayDo, standOn, visit, weighing } from "./piece-acts";
import { pieceSample } from "./piece-sample";
import { spotOf } from "./stage";

const METRIC = { length: "mm", mass: "g", temperature: "c" } as const;

describe("weighing", () => {
  it("sends a plain figure as grams and keeps anything else as typed", () => {
    expect(weighing("p1", "783", METRIC)).toMatchObject({ path: "pieces/p1/weighings/", fields: { mass_g: 783 }, said: `Weighed 783${THIN}g` });
    expect(weighing("p1", "1 lb 4 oz", METRIC)).toMatchObject({ fields: { mass_g: "1 lb 4 oz" }, said: "Weighed 1 lb 4 oz" });
    expect(weighing("p1", "1 4", { ...METRIC, mass: "lb" }).fields).toEqual({ mass_g: "1 4 lb" });
  });
});

describe("standOn", () => {
  it("is told as put there again, and says on what", () => {
    const said = standOn("p1", { id: "r1", name: "Rack B1" }, "bat");

    expect(said).toMatchObject({ path: "pieces/p1/moves/", fields: { place_id: "r1", stands_on: "bat" }, verb: "moved", said: "On a plaster bat" });
  });
});

describe("visit", () => {
  it("carries a reason and a grade only where there is one", () => {
    const checked = spotOf("checked");
    if (!checked) throw new Error("Checked is a spot.");

    expect(visit("p1", checked, { grade: "second" })).toMatchObject({ fields: { stage: "finished", state: "checked", grade: "second" }, said: "Checked, second" });
    expect(visit("p1", checked).fields).toEqual({ stage: "finished", state: "checked" });
  });
});

describe("loss", () => {
  it("says how it ended, why, and whether that is a guess", () => {
    const given = loss("p1", { state: "scrapped", cause: "cracked", partId: "part1", isGuess: true, reclaim: null, photos: [] });

    expect(given.fields).toEqual({ stage: "lost", state: "scrapped", cause: "cracked", cause_is_guess: true, part_id: "part1" });
    expect(given.said).toBe("Scrapped: cracked");
  });
});

describe("mayDo", () => {
  const maker = ["move_place", "check_own", "cover_own", "advance_own", "scrap_own"];

  it("lets a maker carry somebody else's piece and no more", () => {
    expect(mayDo(pieceSample({ mine: false }), maker, ["maker"])).toEqual({ move: true, photo: false, report: false, check: false, cover: false, advance: false, scrap: false, isHelper: false });
  });

  it("lets a helper do all but end it", () => {
    expect(mayDo(pieceSample(), maker.slice(0, 4), ["helper"])).toMatchObject({ advance: true, scrap: false, isHelper: true });
  });

  it("lets an owner do it to anybody's", () => {
    expect(mayDo(pieceSample({ mine: false }), [...maker, "advance_any"], ["owner"])).toMatchObject({ check: true, cover: true, advance: true, scrap: true });
  });
});

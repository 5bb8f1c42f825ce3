import { describe, expect, it } from "vitest";
import type { Programme } from "../../api/shapes-firings";
import { kiln } from "./firing-sample";
import { kilnChanges, kilnFields, kilnTyped, NO_KILN } from "./kiln-typed";
import { NO_PROGRAMME, programmeChanges, programmeFields, programmeTyped } from "./programme-typed";

const METRIC = { length: "mm", mass: "g", temperature: "c" } as const;
const INCHES = { length: "in", mass: "lb", temperature: "f" } as const;
const SHELF = { id: "s", shape: "rect", width_mm: 560, depth_mm: 560, diameter_mm: null, thickness_mm: 19, count: 6 } as const;
const POST = { id: "p", height_mm: 130, count: 12, footprint_mm: 30, stands_inside: true } as const;
const OX = kiln({ shelves: [SHELF], posts: [POST] });

describe("kilnFields", () => {
  it("sends plain figures in the studio's units, and what stands empty is left out", () => {
    const fields = kilnFields({ ...NO_KILN, number: " K4 ", name: "Wren", width: "450", depth: "450", height: "600", top: "1280" }, METRIC);

    expect(fields).toMatchObject({ number: "K4", width_mm: 450, depth_mm: 450, height_mm: 600, top_c: 1280, elements_changed_on: null, shelves: [], posts: [] });
    expect(Object.keys(fields)).not.toContain("firings_before");
    expect(Object.keys(fields)).not.toContain("diameter_mm");
  });

  it("sends inches and °F as typed, with their unit, for the studio to read", () => {
    const fields = kilnFields({ ...NO_KILN, chamber: "round", across: "17 1/2", height: "27", top: "2350" }, INCHES);

    expect(fields).toMatchObject({ diameter_mm: "17 1/2 in", height_mm: "27 in", top_c: "2350 °F" });
  });

  it("sends words that are no figure as they were typed, so that the studio names the field", () => {
    expect(kilnFields({ ...NO_KILN, height: "tall", firings: "many" }, METRIC)).toMatchObject({ height_mm: "tall", firings_before: "many" });
  });
});

describe("kilnChanges", () => {
  it.each([METRIC, INCHES])("is empty where nothing was changed", (units) => {
    const typed = kilnTyped(OX, units);

    expect(kilnChanges(typed, typed, units)).toEqual({});
  });

  it("holds what was changed and no more; shelves go as a whole", () => {
    const before = kilnTyped(OX, METRIC);
    const after = { ...before, top: "1260", shelves: before.shelves.map((shelf) => ({ ...shelf, count: 5 })) };

    expect(kilnChanges(before, after, METRIC)).toEqual({ top_c: 1260, shelves: [{ shape: "rect", width_mm: 560, depth_mm: 560, thickness_mm: 19, count: 5 }] });
  });

  it("lets the old sides go where the chamber is round after all", () => {
    const before = kilnTyped(OX, METRIC);

    expect(kilnChanges(before, { ...before, chamber: "round", across: "610" }, METRIC)).toEqual({ chamber: "round", diameter_mm: 610, width_mm: null, depth_mm: null });
  });
});

const BISQUE: Programme = {
  id: "g", name: "Bisque 04", kind: "bisque", cone: "04", top_c: 1063, hours: 8, revision: 2, needed: null, warnings: [],
  segments: [{ order: 1, to_c: 95, rate_c_per_h: 60, hold_min: 120 }, { order: 2, to_c: 1063, rate_c_per_h: null, hold_min: 0 }],
};

describe("programmeFields", () => {
  it("leaves out legs in which nothing was typed; a leg without a rate goes at full power", () => {
    const fields = programmeFields({ ...NO_PROGRAMME, name: "Slow", cone: "06", top: "1000", legs: [{ to: "1000", rate: "", hold: "" }, { to: "", rate: " ", hold: "" }] }, METRIC);

    expect(fields["segments"]).toEqual([{ to_c: 1000, rate_c_per_h: null, hold_min: 0 }]);
  });

  it("reads degrees an hour in the person's own degrees", () => {
    const fields = programmeFields({ ...NO_PROGRAMME, legs: [{ to: "1945", rate: "108", hold: "15" }] }, INCHES);

    expect(fields["segments"]).toEqual([{ to_c: "1945 °F", rate_c_per_h: 60, hold_min: 15 }]);
  });
});

describe("programmeChanges", () => {
  it.each([METRIC, INCHES])("is empty where nothing was changed", (units) => {
    const typed = programmeTyped(BISQUE, units);

    expect(programmeChanges(typed, typed, units)).toEqual({});
  });

  it("holds the new cone alone", () => {
    const typed = programmeTyped(BISQUE, METRIC);

    expect(programmeChanges(typed, { ...typed, cone: "03" }, METRIC)).toEqual({ cone: "03" });
  });
});

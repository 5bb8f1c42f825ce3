import { describe, expect, it } from "vitest";
import { placement } from "./firing-sample";
import { othersThan, resultsOf, shelvesOf, untold } from "./unload-plan";

const rows = [placement("T21", { id: "a" }), placement("J05", { id: "b" }), placement("L05", { id: "c" })];
const LEVELS = [{ level: 1, items: [{ placement_id: "a" }] }, { level: 2, items: [{ placement_id: "b" }] }];

describe("shelvesOf", () => {
  it("goes from the top shelf down, and what stands nowhere comes last", () => {
    const shelves = shelvesOf({ placements: rows }, LEVELS);

    expect(shelves.map(({ name }) => name)).toEqual(["Upper shelf", "Lower shelf", "Shelf not said"]);
    expect(shelves.map((shelf) => shelf.rows.length)).toEqual([1, 1, 1]);
  });
});

describe("resultsOf", () => {
  it("sends only what differs from the load", () => {
    expect(resultsOf("fired", new Map([["a", "fired"], ["b", "broken"]]))).toEqual([{ placement_id: "b", result: "broken" }]);
  });

  it("wants each told by itself while nobody is sure of the load", () => {
    expect(untold("unsure", rows, new Map([["a", "fired"]])).map(({ id }) => id)).toEqual(["b", "c"]);
    expect(untold("fired", rows, new Map())).toEqual([]);
    expect(resultsOf("unsure", new Map([["a", "fired"]]))).toEqual([{ placement_id: "a", result: "fired" }]);
  });
});

describe("othersThan", () => {
  it("offers an unticked piece anything but what the load did", () => {
    expect(othersThan("fired")).toEqual(["not_fired", "broken", "damp"]);
    expect(othersThan("unsure")).toEqual(["fired", "not_fired", "broken", "damp"]);
  });
});

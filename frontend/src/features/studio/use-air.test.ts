import { describe, expect, it } from "vitest";
import { placesWithAir, readingFields } from "./use-air";

describe("readingFields", () => {
  it("keeps the unit that stood beside the field, and what the person wrote", () => {
    expect(readingFields("61", "64", "f")).toEqual({ air_c: "61 °F", humidity_fraction: "64 %" });
    expect(readingFields("14,2", "", "c")).toEqual({ air_c: "14,2 °C" });
    expect(readingFields(" ", "0.64 fraction", "c")).toEqual({ humidity_fraction: "0.64 fraction" });
  });
});

describe("placesWithAir", () => {
  it("lists rooms before cupboards, and no shelves", () => {
    const place = (name: string, kind: "cupboard" | "rack" | "room") => ({ id: name, name, kind, parent_id: null, air_from_id: null, air_m_s: null, order: 0 });

    expect(placesWithAir([place("cup", "cupboard"), place("A1", "rack"), place("barn", "room")]).map((one) => one.name)).toEqual(["barn", "cup"]);
  });
});

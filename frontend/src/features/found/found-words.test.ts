import { describe, expect, it } from "vitest";
import { foundRow } from "./found-sample";
import { foundEvidence, foundNatch, sizeWords } from "./found-words";

const around = { now: new Date("2026-10-31T09:00:00Z"), zone: "Europe/London" };
const UNITS = { length: "mm", mass: "g", temperature: "c" } as const;

describe("the size", () => {
  it("names its unit once, and leaves out what was not measured", () => {
    expect(sizeWords(foundRow(), UNITS)).toBe("150 × 150 × 12\u202fmm");
    expect(sizeWords(foundRow({ height_mm: null }), UNITS)).toBe("150 × 150\u202fmm");
    expect(sizeWords(foundRow({ x_mm: null, y_mm: null, height_mm: null }), UNITS)).toBe("");
  });

  it("is told in the person's own units", () => {
    expect(sizeWords(foundRow({ x_mm: 50.8, y_mm: 25.4, height_mm: null }), { ...UNITS, length: "in" })).toBe("2 × 1\u202fin");
  });
});

describe("a row", () => {
  it("says how far along, where, and until when it is kept", () => {
    expect(foundEvidence(foundRow(), around)).toBe("bone dry · Rack D3 · kept until Sun 29 Nov");
    expect(foundEvidence(foundRow({ is_notice_past: true, notice_date: "2026-10-29" }), around)).toContain("gone by");
  });

  it("says to whom it went", () => {
    expect(foundEvidence(foundRow({ state: "returned", returned_to: { id: "b", first_name: "Bram", initials: "BT" } }), around)).toBe("given back to Bram · Rack D3");
  });

  it("is two stories when two people claim it", () => {
    expect([0, 1, 2].map((claims_count) => foundNatch(foundRow({ claims_count })))).toEqual(["next", "hand", "two"]);
    expect(foundNatch(foundRow({ state: "disposed" }))).toBe("done");
  });
});

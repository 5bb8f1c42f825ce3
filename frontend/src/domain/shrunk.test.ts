import { describe, expect, it } from "vitest";
import { LONGEST_PX, shrunk } from "./shrunk";

describe("shrunk", () => {
  it.each([
    [{ width: 4032, height: 3024 }, { width: 2048, height: 1536 }],
    [{ width: 3024, height: 4032 }, { width: 1536, height: 2048 }],
    [{ width: LONGEST_PX, height: 10 }, { width: LONGEST_PX, height: 10 }],
  ])("brings %o to %o", (given, wanted) => {
    expect(shrunk(given)).toEqual(wanted);
  });

  it("enlarges nothing", () => {
    expect(shrunk({ width: 60, height: 40 })).toEqual({ width: 60, height: 40 });
  });

  it("leaves at least a pixel of a very long strip", () => {
    expect(shrunk({ width: 100_000, height: 3 })).toEqual({ width: 2048, height: 1 });
  });
});

import { describe, expect, it } from "vitest";
import { coneOptions, coneSet } from "./cone-series";

const CELSIUS = { length: "mm", mass: "g", temperature: "c" } as const;

describe("coneOptions", () => {
  it("keeps 06 and 6 in lists of their own, with what each needs beside it", () => {
    const [cooler, hotter] = coneOptions(CELSIUS, "");

    expect(cooler?.options.map(({ value }) => value)).toContain("06");
    expect(cooler?.options.map(({ value }) => value)).not.toContain("6");
    expect(hotter?.options.find(({ value }) => value === "6")?.words).toMatch(/^6, about 1.?222.°C$/u);
    expect(cooler?.options.find(({ value }) => value === "06")?.words).toMatch(/^06, about 998.°C$/u);
  });

  it("says °F where one reads °F, and no figure where none was read", () => {
    const [, hotter] = coneOptions({ ...CELSIUS, temperature: "f" }, "");

    expect(hotter?.options.find(({ value }) => value === "6")?.words).toMatch(/2.?232.°F$/u);
    expect(hotter?.options.find(({ value }) => value === "12")?.words).toBe("12");
  });

  it("loses no cone that was written another way", () => {
    expect(coneOptions(CELSIUS, "5 1/2").at(-1)?.options).toEqual([{ value: "5 1/2", words: "5 1/2" }]);
    expect(coneOptions(CELSIUS, "04")).toHaveLength(2);
  });
});

describe("coneSet", () => {
  it("stands the next cooler and the next hotter beside a cone, over the nought too", () => {
    expect(coneSet("1")).toEqual({ guide: "01", firing: "1", guard: "2" });
  });
});

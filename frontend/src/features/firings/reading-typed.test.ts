import { describe, expect, it } from "vitest";
import { figureOf, oddReading, pressed, sentFigure, toCelsius } from "./reading-typed";
import type { Key } from "../../ui/number-pad";

const keys = (...all: Key[]): string => all.reduce(pressed, "");

describe("the pad", () => {
  it("writes figures, takes one back, wipes all, and stops at what makes sense", () => {
    expect(keys("6", "4", "2")).toBe("642");
    expect(keys("6", "4", "2", "back")).toBe("64");
    expect(keys("6", "4", "wipe", "0", "5")).toBe("5");
    expect(keys("1", "2", "3", "4", "5", "6", "7")).toBe("123456");
  });
});

describe("figureOf", () => {
  it("reads figures as people type them, and nothing else", () => {
    expect(["642", "12,5", " 85 ", "\u22125", "", "hot", "6e3"].map(figureOf)).toEqual([642, 12.5, 85, -5, null, null, null]);
  });
});

describe("degrees", () => {
  it("are sent in °C as a number, in °F with their unit", () => {
    expect(sentFigure(642, "c")).toBe(642);
    expect(sentFigure(1222, "f")).toBe("1222 °F");
    // Boiling water at one atmosphere: 212 °F is 100 °C by the definition of both scales.
    expect(toCelsius(212, "f")).toBeCloseTo(100);
  });
});

describe("oddReading", () => {
  it("asks whether it was °F, where that would be a kiln's own", () => {
    const odd = oddReading(2232, 1300, "c");

    // (2232 - 32) / 1.8 = 1222.2
    expect(odd?.instead?.celsius).toBe(1222.2);
    expect(odd?.why).toContain("1300");
  });

  it("asks without a guess where no other degrees help", () => {
    expect(oddReading(9999, 1300, "c")?.instead).toBeNull();
    expect(oddReading(2000, 1300, "f")?.instead).toBeNull();
  });

  it("leaves alone what may be so, and a kiln nobody has heard of", () => {
    expect(oddReading(1222, 1300, "c")).toBeNull();
    expect(oddReading(1350, 1300, "c")).toBeNull();
    expect(oddReading(2232, null, "c")).toBeNull();
  });
});

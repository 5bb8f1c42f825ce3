import { describe, expect, it } from "vitest";
import { inDegrees } from "./degrees";

const CELSIUS = { length: "mm", mass: "g", temperature: "c" } as const;
const FAHRENHEIT = { ...CELSIUS, temperature: "f" } as const;

describe("inDegrees", () => {
  it("leaves a sentence alone for who reads °C", () => {
    expect(inDegrees("This studio opens at 100 °C.", CELSIUS)).toBe("This studio opens at 100 °C.");
  });

  // 0 °C is 32 °F and 100 °C is 212 °F by definition of the scale.
  it("puts temperatures into °F", () => {
    expect(inDegrees("It reads 240 °C. This studio opens at 100 °C.", FAHRENHEIT)).toBe("It reads 464\u202f°F. This studio opens at 212\u202f°F.");
  });

  it("gives steps and rates no nought", () => {
    expect(inDegrees("Cone 04 is about 1060 °C, cone 4 about 1160 °C: 100 °C apart, at 60 °C an hour.", FAHRENHEIT))
      .toBe("Cone 04 is about 1940\u202f°F, cone 4 about 2120\u202f°F: 180\u202f°F apart, at 108\u202f°F an hour.");
  });

  it("leaves a question of which degrees were meant as it was asked", () => {
    const asked = "2232 °C is over the top of this kiln, 1280 °C: was it 2232 °F, which is 1222 °C?";

    expect(inDegrees(asked, FAHRENHEIT)).toBe(asked);
  });
});

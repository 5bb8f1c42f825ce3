import { describe, expect, it } from "vitest";
import { asTyped, quantity } from "./typed";

describe("quantity", () => {
  it("sends a plain figure as a number and anything else as it was typed", () => {
    expect(quantity(" 783 ", "g", "g")).toBe(783);
    expect(quantity("−4.5", "c", "c")).toBe(-4.5);
    expect(quantity("6,5", "mm", "mm")).toBe("6,5 mm");
    expect(quantity("1 lb 4 oz", "g", "g")).toBe("1 lb 4 oz");
    expect(quantity("5 3/8", "in", "mm")).toBe("5 3/8 in");
  });

  it("adds the unit beside the field where none was typed", () => {
    expect(quantity("61", "°F", "c")).toBe("61 °F");
    expect(quantity("61 °F", "°C", "c")).toBe("61 °F");
    expect(quantity("62", "%", "fraction")).toBe("62 %");
  });

  it("leaves nonsense for the server to refuse, beside its field", () => {
    expect(quantity("heavy", "g", "g")).toBe("heavy");
    expect(quantity("", "g", "g")).toBe("");
  });
});

describe("asTyped", () => {
  it("puts back what stood in the field", () => {
    expect(asTyped(783, "g")).toBe("783");
    expect(asTyped("61 °F", "°F")).toBe("61");
    expect(asTyped("1 lb 4 oz", "g")).toBe("1 lb 4 oz");
    expect(asTyped(null, "g")).toBe("");
  });
});

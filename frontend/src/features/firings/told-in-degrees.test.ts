import { describe, expect, it } from "vitest";
import { load, placement, reading } from "./firing-sample";
import { loadIn } from "./told-in-degrees";

const FAHRENHEIT = { length: "mm", mass: "g", temperature: "f" } as const;
const thick = { code: "thick-wall", detail: "T21: 20 mm at its thickest: give it a longer hold below 100 °C." };
const facts = { highest_c: 900, highest_at: null, above_600_h: 2, gap_h: 1, last_c: 740, last_at: null };
const choice = { code: "resume", kind: "resumed", outcome: "", words: "Light it again from 740 °C.", is_backed: false } as const;

describe("loadIn", () => {
  const said = loadIn(load({
    warnings: [thick], placements: [placement("T21", { warnings: [thick], override_reason: "held at 95 °C before" })], readings: [reading(1, 1300, { why: "1300 °C is over the top of this kiln, 1280 °C." })],
    stopped: { facts, caution: "Under 600 °C nothing is fired.", choices: [choice] },
  }), FAHRENHEIT);

  it("puts into °F whatever the studio says of it", () => {
    expect(said.warnings[0]?.detail).toContain("below 212\u202f°F");
    expect(said.placements[0]?.warnings[0]?.detail).toContain("below 212\u202f°F");
    expect(said.readings[0]?.why).toBe("2372\u202f°F is over the top of this kiln, 2336\u202f°F.");
    expect(said.stopped?.choices[0]?.words).toBe("Light it again from 1364\u202f°F.");
    expect(said.stopped?.caution).toContain("1112\u202f°F");
  });

  it("leaves what a person wrote as it was written", () => {
    expect(said.placements[0]?.override_reason).toBe("held at 95 °C before");
  });

  it("keeps figures in the studio's unit: screens say them in the person's", () => {
    expect(said.stopped?.facts.last_c).toBe(740);
  });
});

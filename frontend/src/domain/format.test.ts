import { describe, expect, it } from "vitest";
import {
  about, basis, chance, count, fromAbout, halves, joinFacts, length, likelyRange, mass, ordinal, percent, span,
  temperature, THIN, upperFirst,
} from "./format";
import type { Units } from "./format";

const LONDON = "Europe/London";
const NOW = new Date("2026-10-31T09:00:00Z");
const METRIC: Units = { length: "mm", mass: "g", temperature: "c" };
const IMPERIAL: Units = { length: "in", mass: "lb", temperature: "f" };
const plain = (words: string): string => words.replaceAll(THIN, " ");
const before = (minutes: number): Date => new Date(NOW.getTime() - minutes * 60_000);

describe("span", () => {
  it.each([
    [0.4, "just now"],
    [40, "40 min"],
    [59.4, "59 min"],
    [60, "1 h"],
    [16.7 * 60, "16½ h"],
    [18.9 * 60, "19 h"],
    [47.9 * 60, "48 h"],
    [48 * 60, "2 d"],
    [9.9 * 24 * 60, "9 d"],
  ])("%s minutes are %s", (minutes, words) => {
    expect(plain(span(before(minutes), NOW))).toBe(words);
  });

  it("never says a negative time when two clocks disagree", () => {
    expect(span(before(-3), NOW)).toBe("just now");
  });

  it("keeps the figure with its unit", () => {
    expect(span(before(40), NOW)).toBe("40\u202fmin");
  });
});

describe("a coming time", () => {
  it("is rounded to ten minutes today", () => {
    expect(fromAbout(new Date("2026-10-31T09:57:00Z"), NOW, LONDON)).toBe("from about 10:00");
    expect(fromAbout(new Date("2026-10-31T10:39:00Z"), NOW, LONDON)).toBe("from about 10:40");
  });

  it("loses its minutes when it is coarser", () => {
    expect(about(new Date("2026-10-31T11:10:00Z"), NOW, LONDON, true)).toBe("about 11");
  });

  it("is a day when it is not today", () => {
    expect(fromAbout(new Date("2026-11-02T10:00:00Z"), NOW, LONDON)).toBe("from Mon 2 Nov");
  });

  it("is a range of days, or of times within today", () => {
    const [monday, wednesday] = [new Date("2026-11-02T10:00Z"), new Date("2026-11-04T10:00Z")];

    expect(likelyRange(monday, wednesday, NOW, LONDON)).toBe("Mon 2 to Wed 4 Nov");
    expect(likelyRange(new Date("2026-10-31T10:02Z"), new Date("2026-10-31T11:28Z"), NOW, LONDON)).toBe(
      "10:00 to 11:30",
    );
  });
});

describe("quantities", () => {
  it("stand in the person's own units", () => {
    expect(plain(mass(783.2, METRIC))).toBe("783 g");
    expect(plain(mass(12_340, METRIC))).toBe("12.3 kg");
    expect(plain(length(118, METRIC))).toBe("118 mm");
    expect(plain(temperature(1060, METRIC))).toBe("1060 °C");
  });

  // Conversions: NIST Handbook 44, Appendix C (1 in = 25.4 mm, 1 lb = 453.592 37 g exactly).
  it("convert exactly", () => {
    expect(plain(mass(453.59237 * 1.25, IMPERIAL))).toBe("1 lb 4 oz");
    expect(plain(mass(28.35, IMPERIAL))).toBe("1 oz");
    expect(plain(length(25.4 * 4.625, IMPERIAL))).toBe("4 5/8 in");
    expect(plain(length(25.4 * 1.5, IMPERIAL))).toBe("1½ in");
    expect(plain(length(25.4 * 0.75, IMPERIAL))).toBe("¾ in");
    expect(plain(length(0, IMPERIAL))).toBe("0 in");
    expect(plain(temperature(100, IMPERIAL))).toBe("212 °F");
  });

  it("use a true minus", () => {
    expect(plain(temperature(-4, METRIC))).toBe("−4 °C");
  });

  it("set halves as one glyph and fractions as percentages with a space", () => {
    expect(halves(0.5)).toBe("½");
    expect(halves(16.74)).toBe("16½");
    expect(plain(percent(0.058))).toBe("6 %");
  });
});

describe("words for what is not certain", () => {
  it("calls it a studio guess under eight checks", () => {
    expect(basis({ basis: "guess", checks: 0 })).toBe("studio guess");
    expect(basis({ basis: "checks", checks: 7 })).toBe("studio guess");
    expect(basis({ basis: "checks", checks: 8 })).toBe("from 8 of your checks");
  });

  it("gives odds only after twenty outcomes of its own", () => {
    expect(chance(0.8, 19)).toBe("likely (guess)");
    expect(chance(0.95, 0)).toBe("very likely (guess)");
    expect(chance(0.2, 0)).toBe("doubtful (guess)");
    expect(chance(0.8, 20)).toBe("4 in 5 chance");
    expect(chance(1, 20)).toBe("more than 9 in 10");
  });
});

describe("small words", () => {
  it("joins three facts at most and drops what is missing", () => {
    expect(joinFacts("in mould", null, "M02", "", "Bench 1", "Nell")).toBe("in mould · M02 · Bench 1");
  });

  it("counts and orders", () => {
    expect(count(1, "press", "presses")).toBe("1 press");
    expect(count(17, "press", "presses")).toBe("17 presses");
    expect([2, 11, 12, 21, 112].map(ordinal)).toEqual(["second", "11th", "12th", "21st", "112th"]);
    expect(upperFirst("from about 10:00")).toBe("From about 10:00");
  });
});

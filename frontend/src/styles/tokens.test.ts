import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const css = readFileSync(new URL("./tokens.css", import.meta.url), "utf8");

function themeAfter(selector: string): Map<string, string> {
  const start = css.indexOf(selector);
  if (start < 0) throw new Error(`tokens.css has no ${selector}`);
  const block = css.slice(start, css.indexOf("}", start));
  return new Map([...block.matchAll(/--(\w+):\s*(#[0-9A-F]{6});/g)].map((found) => [found[1] ?? "", found[2] ?? ""]));
}

/** Relative luminance and contrast ratio: WCAG 2.2, definitions "relative luminance" and "contrast ratio". */
function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const part = parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (red ?? NaN) + 0.7152 * (green ?? NaN) + 0.0722 * (blue ?? NaN);
}

function contrast(one: string, other: string): number {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return ((high ?? NaN) + 0.05) / ((low ?? NaN) + 0.05);
}

const TEXT = [
  ["ink", "paper"], ["ink", "damp"], ["pencil", "paper"], ["pencil", "damp"],
  ["live", "paper"], ["live", "damp"], ["onlive", "fill"], ["paper", "ink"],
] as const;
const LINES = [["rule", "paper"], ["rule", "damp"], ["filledge", "damp"]] as const;

describe.each([
  ["sun", ":root {"],
  ["shed", ':root[data-theme="shed"]'],
  ["the phone's dark", ":root:not([data-theme])"],
])("colours of %s", (_name, selector) => {
  const theme = themeAfter(selector);
  const of = (token: string): string => theme.get(token) ?? `no ${token}`;

  it.each(TEXT)("%s on %s is at least 7", (over, under) => {
    expect(contrast(of(over), of(under))).toBeGreaterThanOrEqual(7);
  });

  it.each(LINES)("%s on %s is at least 3", (over, under) => {
    expect(contrast(of(over), of(under))).toBeGreaterThanOrEqual(3);
  });
});

describe("the contrast sum", () => {
  it("gives 21 for black on white, as WCAG 2.2 says", () => {
    expect(contrast("#000000", "#FFFFFF")).toBeCloseTo(21, 6);
  });
});

describe("the two dark blocks", () => {
  it("are the same colours", () => {
    expect(themeAfter(":root:not([data-theme])")).toEqual(themeAfter(':root[data-theme="shed"]'));
  });
});

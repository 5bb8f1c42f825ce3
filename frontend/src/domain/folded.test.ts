import { describe, expect, it } from "vitest";
import { folded, wordsOf } from "./folded";

describe("folded", () => {
  // The same pairs as the studio's own test, so that the phone finds without signal what the studio finds with it.
  it.each([
    ["Café Wyvern", "cafe wyvern"], ["Cafe\u0301", "CAFÉ"], ["T\u200b01", "t01"], ["T01", "T\u2060\u00ad01"], ["Ｔ０１", "t01"], ["Straße", "STRASSE"],
    ["Bjørn Łuk", "bjorn luk"], ["Æsop", "aesop"], ["d\u2019Arcy", "d'arcy"], ["Ξένη", "ξενη"], ["ΣΊΣΥΦΟΣ", "σισυφος"], ["\u3164T01", "t01"],
    ["barley\u00a0 tile ", "barley tile"], ["שָׁלוֹם", "שלום"], ["\ufeffT01", "t01"],
  ])("is the same for %s and %s", (written, asked) => {
    expect(folded(written)).toBe(folded(asked));
  });

  it("differs for what reads otherwise", () => {
    expect(folded("T01")).not.toBe(folded("T10"));
    expect(folded("o")).not.toBe(folded("0"));
  });
});

describe("wordsOf", () => {
  it("are none where nothing was asked", () => {
    expect([wordsOf(""), wordsOf(" \u200b "), wordsOf("\u3164 \u0301")]).toEqual([[], [], []]);
  });
});

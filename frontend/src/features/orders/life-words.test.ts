import { describe, expect, it } from "vitest";
import { asideWords, lifeFigures, lifeSentence } from "./life-words";
import { livesAnswer, orderPiece } from "./order-sample";

const around = { now: new Date("2026-10-31T09:00:00Z"), zone: "Europe/London" };
const { pieces } = livesAnswer();

describe("the sentence under the life line", () => {
  it("counts the pieces and the lost, and names the one that waits longest", () => {
    expect(lifeSentence(pieces, around.now)).toBe("3 pieces, 1 lost. S02 has waited longest: bisqued for 8\u202fd.");
  });

  it("says so when none waits", () => {
    expect(lifeSentence(pieces.filter((life) => life.mark === "S04"), around.now)).toBe("1 piece. None waits.");
  });
});

describe("beside a strip", () => {
  it("stand the words of the piece, and how long it waits", () => {
    const words = pieces.map((life) => asideWords(life, life.mark === "S01" ? orderPiece("S01", "scrapped", { state_words: "handle join opened" }) : undefined, around.now));
    expect(words).toEqual(["handle join opened", "bisqued, waits 8\u202fd", "in mould"]);
  });
});

describe("the figures", () => {
  it("tell every span with its days, the last with the day it began", () => {
    const [lost, fired] = lifeFigures(pieces, around);
    expect(lost?.spans).toEqual(["in mould Mon 5 to Tue 6", "out, to join Tue 6 to Wed 7", "drying covered Wed 7 to Sun 18", "scrapped Sun 18"]);
    expect(fired?.spans.at(-1)).toBe("bisqued since Thu 22");
  });
});

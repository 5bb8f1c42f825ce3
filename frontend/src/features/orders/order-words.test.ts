import { describe, expect, it } from "vitest";
import { against, awayWords, chanceWords, dueWords, lineOne, promisedWords, rangeAgainst, rowEvidence } from "./order-words";
import { orderAnswer, orderRow, outlookLine } from "./order-sample";

const around = { now: new Date("2026-10-31T09:00:00Z"), zone: "Europe/London" };

describe("a line of an order", () => {
  const [line] = orderAnswer().lines;
  if (!line) throw new Error("The sample has a line.");

  it("says what is wanted left of the seam, what there is right of it, and the losses after", () => {
    expect(lineOne(line, null, 0)).toEqual({ figure: "2", unit: "wanted", verdict: "1 bisqued, 3 on the way", evidence: "1 lost" });
  });

  it("gives the chance in words and calls it a guess while there are too few outcomes", () => {
    expect(lineOne(line, outlookLine(), 6).evidence).toBe("1 lost · likely enough by 18 Dec 2026 (guess)");
  });

  it("gives odds, never a percentage, once the studio has twenty outcomes of its own", () => {
    const words = chanceWords({ ...outlookLine(), chance: 0.98 }, 24);
    expect(words).toBe("two good: more than 9 in 10");
    expect(words).not.toContain("%");
  });

  it("keeps the whole sentence when none was begun", () => {
    expect(lineOne({ ...line, sentence: "6 pairs wanted: none begun", wanted_sets: 6 }, null, 0)).toMatchObject({ unit: "pairs wanted", verdict: "None begun", evidence: "" });
  });
});

describe("the promise", () => {
  it("stands beside the likely days in words", () => {
    expect(promisedWords("2026-12-18", around)).toBe("Fri 18 Dec");
    expect(rangeAgainst("2026-12-18", "2026-12-04", "2026-12-12", around.zone)).toBe("likely Fri 4 to Sat 12 Dec · in time");
    expect(rangeAgainst("2026-12-10", "2026-12-04", "2026-12-12", around.zone)).toContain("may be late");
    expect(rangeAgainst("2026-12-01", "2026-12-04", "2026-12-12", around.zone)).toBe("likely Fri 4 to Sat 12 Dec · late");
  });

  it("is not compared while one of the two is unknown", () => {
    expect(against(null, "2026-12-04", "2026-12-12")).toBe("unknown");
    expect(rangeAgainst("2026-12-18", null, null, around.zone)).toBeNull();
  });

  it("counts days on the studio's calendar, over the change of the clocks too", () => {
    expect(awayWords("2026-11-01", around)).toBe("tomorrow");
    expect(awayWords("2026-10-30", around)).toBe("1 day ago");
    expect(awayWords("2026-10-25", { ...around, now: new Date("2026-10-24T23:30:00Z") })).toBe("today");
  });
});

describe("a row of the list", () => {
  it("names its day as short as it can without being mistaken", () => {
    expect(["2026-12-18", "2027-02-15", "2028-01-11", "2025-10-01"].map((day) => dueWords(day, around))).toEqual(["18 Dec", "15 Feb", "11 Jan 2028", "1 Oct 2025"]);
    expect(dueWords(null, around)).toBe("no day");
  });

  it("says how many are finished before what is on the way", () => {
    expect(rowEvidence(orderRow())).toBe("0 of 2 finished · 4 on the way · 1\u00a0lost");
  });
});

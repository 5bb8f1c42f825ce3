import { describe, expect, it } from "vitest";
import { filtered, markRange, pathUnder, rowsOf, storyWeeks } from "./story-view";
import { told } from "./order-sample";

const around = { now: new Date("2026-10-31T09:00:00Z"), zone: "Europe/London" };

describe("the weeks of a story", () => {
  it("begin on Mondays of the studio's calendar, though the clocks go back on one of their Sundays", () => {
    const weeks = storyWeeks([told("c", "2026-10-26T00:10:00Z"), told("b", "2026-10-25T23:50:00Z"), told("a", "2026-10-19T00:00:00Z"), told("z", "2026-10-18T22:50:00Z")], around);

    expect(weeks.map((week) => [week.words, week.lines.length])).toEqual([["Week of 26 October", 1], ["Week of 19 October", 2], ["Week of 12 October", 1]]);
  });

  it("name the year when it is another", () => {
    expect(storyWeeks([told("a", "2025-12-30T10:00:00Z")], around)[0]?.words).toBe("Week of 29 December 2025");
  });
});

describe("a line", () => {
  it("shows both times when it was told late", () => {
    const [week] = storyWeeks([told("a", "2026-10-18T07:40:00Z", { written_at: "2026-10-19T07:05:00Z", is_late: true })], around);
    expect(week?.lines[0]).toMatchObject({ day: "Sun 18", clock: "08:40", evidence: "written Mon 19, 08:05 · Odile" });
  });

  it("stands once for the order itself and once for each thing said of pieces", () => {
    const [week] = storyWeeks([told("a", "2026-10-30T10:00:00Z", { words: "handed over", note: "by van", lines: [
      { words: "delivered", marks: ["T01", "T02", "T03"], piece_ids: ["1", "2", "3"] }, { words: "left for another order", marks: ["T09"], piece_ids: ["9"] },
    ] })], around);
    expect(week?.lines.map((line) => [line.marks, line.words, line.note])).toEqual([["", "Handed over", "by van"], ["T01–T03", "Delivered", null], ["T09", "Left for another order", null]]);
  });

  it("says who took it back, and what came along from another order", () => {
    const taken = told("a", "2026-10-30T10:00:00Z", { is_taken_back: true, taken_back_by: { id: "p", first_name: "Piet", initials: "PA" }, came_from_other_order: true });
    expect(storyWeeks([taken], around)[0]?.lines[0]?.evidence).toBe("taken back by Piet · from before it came to this order · Odile");
  });
});

describe("marks", () => {
  it("are drawn together where their numbers follow", () => {
    expect(markRange(["T05", "T06", "T07", "T09", "B02", "B03"])).toBe("T05–T07, T09, B02, B03");
    expect(markRange(["BB-2026-014"])).toBe("BB-2026-014");
    expect(markRange(["T09", "T10", "T11"])).toBe("T09–T11");
  });
});

describe("pages and filters", () => {
  it("never show a row twice", () => {
    const row = told("a", "2026-10-30T10:00:00Z");
    expect(rowsOf([{ results: [row], next: null }, { results: [row, told("b", "2026-10-29T10:00:00Z")], next: null }]).map(({ id }) => id)).toEqual(["a", "b"]);
  });

  it("filter what is on the phone while the studio is not heard", () => {
    const rows = [told("a", "2026-10-30T10:00:00Z", { kind: "loss" }), told("b", "2026-10-29T10:00:00Z")];
    expect(filtered(rows, "losses").map(({ id }) => id)).toEqual(["a"]);
    expect(filtered(rows, "all")).toHaveLength(2);
  });

  it("show what came with photos, and what has them in a piece's own story", () => {
    const rows = [told("a", "2026-10-30T10:00:00Z", { photo_ids: ["p"] }), told("b", "2026-10-29T10:00:00Z", { has_hidden_photos: true }), told("c", "2026-10-28T10:00:00Z")];

    expect(filtered(rows, "photos").map(({ id }) => id)).toEqual(["a", "b"]);
    expect(storyWeeks(rows, around)[0]?.lines.map((line) => [line.photoIds, line.evidence])).toEqual([
      [["p"], "Odile"], [[], "its photos stand in the piece’s own story · Odile"], [[], "Odile"],
    ]);
  });

  it("follow the server's address from under the studio", () => {
    expect(pathUnder("/api/v1/studios/barn/", "/api/v1/studios/barn/commissions/x/history/?cursor=abc")).toBe("commissions/x/history/?cursor=abc");
  });
});

import { describe, expect, it } from "vitest";
import { bandPath, daysOf, linePath, midnightOf, namedDays, placeOn, valueAt } from "./plot";

const LONDON = "Europe/London";
const at = (iso: string): Date => new Date(iso);

describe("placeOn", () => {
  it("runs either way", () => {
    expect(placeOn({ from: 0, to: 1, start: 100, end: 0 }, 0.25)).toBe(75);
    expect(placeOn({ from: 10, to: 20, start: 0, end: 50 }, 12)).toBe(10);
  });
});

describe("paths", () => {
  const line = [{ x: 0, y: 1 }, { x: 2, y: 3 }];

  it("join what there is and draw no single point", () => {
    expect(linePath(line)).toBe("M0 1L2 3");
    expect(linePath(line.slice(0, 1))).toBe("");
  });

  it("close a band by running the lower line backwards", () => {
    expect(bandPath(line, [{ x: 0, y: 5 }, { x: 2, y: 6 }])).toBe("M0 1L2 3L2 6L0 5Z");
  });
});

describe("valueAt", () => {
  it("lies between its neighbours and is not made up outside them", () => {
    expect(valueAt([0, 10, 20], [1, 0.5, 0.1], 5)).toBeCloseTo(0.75);
    expect(valueAt([0, 10, 20], [1, 0.5, 0.1], 20)).toBe(0.1);
    expect(valueAt([0, 10, 20], [1, 0.5, 0.1], 21)).toBeNull();
    expect(valueAt([0, 10, 20], [1, 0.5, 0.1], -1)).toBeNull();
  });
});

describe("days", () => {
  // British summer time ended on 25 October 2026 at 01:00 UTC: Summer Time Order 2002 (SI 2002/262).
  it("begin at the wall clock's midnight, also where the clocks change", () => {
    expect(midnightOf(at("2026-10-25T18:00:00Z"), LONDON).toISOString()).toBe("2026-10-24T23:00:00.000Z");
    expect(midnightOf(at("2026-10-31T09:10:30Z"), LONDON).toISOString()).toBe("2026-10-31T00:00:00.000Z");
    expect(midnightOf(at("2026-03-29T18:00:00Z"), LONDON).toISOString()).toBe("2026-03-29T00:00:00.000Z");
  });

  it("are each there once", () => {
    const days = daysOf(at("2026-10-24T20:00:00Z"), at("2026-10-27T06:00:00Z"), at("2026-10-26T09:00:00Z"), LONDON);

    expect(days.map((mark) => mark.day)).toEqual([24, 25, 26, 27]);
    expect(days.map((mark) => mark.isToday)).toEqual([false, false, true, false]);
  });

  it("are named sparsely when there are many, but today always", () => {
    const days = daysOf(at("2026-10-29T12:00:00Z"), at("2026-11-11T12:00:00Z"), at("2026-10-31T09:00:00Z"), LONDON);

    expect(namedDays(days, 7).map(({ words }) => words)).toEqual(["Thu 29", "Sat 31", "Mon 2", "Wed 4", "Fri 6", "Sun 8", "Tue 10"]);
    expect(namedDays(days.slice(0, 3), 7).map(({ words }) => words)).toEqual(["Thu", "Fri", "Sat"]);
  });
});

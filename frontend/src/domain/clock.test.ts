import { describe, expect, it } from "vitest";
import { clock, date, dateRange, day, dayAndClock, daysBetween, realTime, titleTime, twoTimes } from "./clock";

const LONDON = "Europe/London";
const at = (iso: string): Date => new Date(iso);
const NOW = at("2026-10-31T09:00:00Z");

describe("clock", () => {
  it("reads the studio's clock and not the phone's", () => {
    expect(clock(at("2026-07-01T08:04:00Z"), LONDON)).toBe("09:04");
    expect(clock(at("2026-10-31T00:05:00Z"), LONDON)).toBe("00:05");
  });
});

describe("day", () => {
  it.each([
    ["2026-10-31T00:01:00Z", "today"],
    ["2026-10-30T23:59:00Z", "yesterday"],
    ["2026-10-29T12:00:00Z", "Thu 29"],
    ["2026-11-02T12:00:00Z", "Mon 2 Nov"],
    ["2025-10-31T12:00:00Z", "Fri 31 Oct 2025"],
  ])("calls %s %s", (iso, words) => {
    expect(day(at(iso), NOW, LONDON)).toBe(words);
  });

  it("puts the time after a day that is not today", () => {
    expect(dayAndClock(at("2026-10-30T16:20:00Z"), NOW, LONDON)).toBe("yesterday, 16:20");
    expect(dayAndClock(at("2026-10-31T08:52:00Z"), NOW, LONDON)).toBe("08:52");
  });
});

describe("date", () => {
  it("names the month only when it is another", () => {
    expect(date(at("2026-10-18T08:40:00Z"), NOW, LONDON)).toBe("Sun 18");
    expect(date(at("2026-09-18T08:40:00Z"), NOW, LONDON)).toBe("Fri 18 Sep");
  });

  it("heads the screen in full", () => {
    expect(titleTime(NOW, LONDON)).toBe("Sat 31 Oct, 09:00");
  });
});

describe("dateRange", () => {
  it.each([
    ["2026-11-02T12:00Z", "2026-11-04T12:00Z", "Mon 2 to Wed 4 Nov"],
    ["2026-10-31T12:00Z", "2026-11-04T12:00Z", "Sat 31 Oct to Wed 4 Nov"],
    ["2026-12-30T12:00Z", "2027-01-02T12:00Z", "Wed 30 Dec 2026 to Sat 2 Jan 2027"],
    ["2026-11-02T08:00Z", "2026-11-02T18:00Z", "Mon 2 Nov"],
  ])("%s to %s is %s", (from, to, words) => {
    expect(dateRange(at(from), at(to), LONDON)).toBe(words);
  });
});

describe("twoTimes", () => {
  it("gives the second time only if it differs", () => {
    const happened = at("2026-10-18T07:40:00Z");

    expect(twoTimes(happened, at("2026-10-19T07:05:00Z"), NOW, LONDON)).toBe(
      "Sun 18, 08:40 · written Mon 19, 08:05",
    );
    expect(twoTimes(happened, at("2026-10-18T07:40:20Z"), NOW, LONDON)).toBe("Sun 18, 08:40");
  });
});

describe("where the clocks change", () => {
  // British summer time ends on the last Sunday of October at 01:00 UTC: Summer Time Order 2002 (SI 2002/262).
  it("counts the real hours of the night", () => {
    expect(realTime(at("2026-10-24T21:00:00Z"), at("2026-10-25T08:00:00Z"), LONDON)).toBe("11 h 00 of real time");
    expect(realTime(at("2026-10-30T21:00:00Z"), at("2026-10-31T08:00:00Z"), LONDON)).toBeNull();
  });

  it("counts calendar days, not spans of 24 hours", () => {
    expect(daysBetween(at("2026-10-24T23:30:00Z"), at("2026-10-26T00:00:00Z"), LONDON)).toBe(1);
  });
});

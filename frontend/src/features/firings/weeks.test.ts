import { describe, expect, it } from "vitest";
import { kiln, load } from "./firing-sample";
import { drawWeeks } from "./weeks-geometry";
import { barsOf, closedDays, planDays, planOf } from "./weeks-plan";

const LONDON = "Europe/London";
const NOW = new Date("2026-10-31T09:00:00Z");
const AROUND = { width: 360, rem: 16, now: NOW, zone: LONDON } as const;
const times = load().times;
const hours = { weekly: [0, 1, 2, 3, 4, 5].map((weekday) => ({ weekday, opens: "08:00", closes: "18:00" })), closed_days: [{ date: "2026-11-04", why: "fair" }] };

describe("planDays", () => {
  it("are four weeks from this week's Monday, over a clock change too", () => {
    const days = planDays(NOW, LONDON);
    const overChange = planDays(new Date("2026-10-21T09:00:00Z"), LONDON);

    expect([days.length, days[0]?.day, days.at(-1)?.day]).toEqual([28, 26, 22]);
    expect([overChange.length, overChange[0]?.day, overChange.at(-1)?.day]).toEqual([28, 19, 15]);
    expect(days.find((mark) => mark.isToday)?.day).toBe(31);
  });
});

describe("closedDays", () => {
  it("are weekdays without hours, and days on the calendar", () => {
    expect([...closedDays(planDays(NOW, LONDON), hours, LONDON)]).toEqual([6, 9, 13, 20, 27]);
  });

  it("are none in a studio that never said its hours", () => {
    expect(closedDays(planDays(NOW, LONDON), { weekly: [], closed_days: [] }, LONDON).size).toBe(0);
  });
});

describe("barsOf", () => {
  it("outlines what is booked, with its firing as the head", () => {
    expect(barsOf(load(), kiln(), NOW).map(({ kind }) => kind)).toEqual(["booked", "firing"]);
  });

  it("tells firing, cooling and waiting apart where they happened or are likely", () => {
    const cooling = load({ state: "cooling", times: { ...times, started_at: "2026-10-30T17:30:00Z", ended_at: "2026-10-31T04:00:00Z" } });
    const opening = {
      limit_c: 100, early: null, likely: "2026-10-31T21:30:00Z", late: null, staffed_at: "2026-11-02T08:00:00Z", basis: "readings", air_c: 12, k_per_h: 0.155, last_c: 642,
      last_at: null, words: "",
    } as const;
    const kilnOf = kiln({ opening, doing: { ...kiln().doing, load: { id: "l1", number: "F-210", starts_at: cooling.starts_at } } });

    expect(barsOf(cooling, kilnOf, NOW)).toEqual([
      { kind: "firing", from: new Date("2026-10-30T17:30:00Z"), to: new Date("2026-10-31T04:00:00Z") },
      { kind: "cooling", from: new Date("2026-10-31T04:00:00Z"), to: new Date("2026-10-31T21:30:00Z") },
      { kind: "waits", from: new Date("2026-10-31T21:30:00Z"), to: new Date("2026-11-02T08:00:00Z") },
    ]);
  });

  it("draws nothing of a load that was called off", () => {
    expect(barsOf(load({ state: "called_off" }), kiln(), NOW)).toEqual([]);
  });
});

describe("drawWeeks", () => {
  const promises = [{ id: "c1", words: "C-102", date: "2026-11-06" }];
  const plan = planOf({ kilns: [kiln()], loads: [load()], hours, promises }, NOW, LONDON);

  it("sets weeks under weeks on a phone, each load in its kiln's lane and week", () => {
    const picture = drawWeeks(plan, { ...AROUND, daysInRow: 7 });
    const [first, second] = picture.rows;

    expect(picture.rows).toHaveLength(4);
    expect(first?.bars).toHaveLength(0);
    expect(second?.bars.map(({ kind }) => kind)).toEqual(["booked", "firing"]);
    expect(second?.labels.map(({ words }) => words)).toEqual(["F-211"]);
    // Monday 18:00 is three quarters into the first column.
    expect(second?.bars[0]?.x).toBeCloseTo(picture.left + 0.75 * ((360 - picture.left) / 7), 0);
    expect(second?.promises.map(({ words }) => words)).toEqual(["C-102"]);
  });

  it("hangs the now line in its own week alone", () => {
    const picture = drawWeeks(plan, { ...AROUND, daysInRow: 7 });

    expect(picture.rows.map((row) => row.nowX !== null)).toEqual([true, false, false, false]);
  });

  it("sets all 28 days side by side on a desk", () => {
    const picture = drawWeeks(plan, { ...AROUND, width: 1120, daysInRow: 28 });

    expect(picture.rows).toHaveLength(1);
    expect(picture.rows[0]?.weekStarts.map(({ words }) => words)).toEqual(["26 Oct", "2 Nov", "9 Nov", "16 Nov"]);
    expect(picture.rows[0]?.promises[0]?.anchor).toBe("middle");
    expect(picture.rows[0]?.closed).toHaveLength(5);
  });

  it("never lays one name over another load", () => {
    const times = (starts: string, ends: string) => ({ starts_at: starts, expected_end_at: ends });
    const crowd = [1, 2, 3].map((place) => load({ id: `l${String(place)}`, number: `F-21${String(place)}`, ...times(`2026-11-0${String(2 * place)}T08:00:00Z`, `2026-11-0${String(2 * place)}T20:00:00Z`) }));
    const row = drawWeeks(planOf({ kilns: [kiln()], loads: crowd, hours, promises: [] }, NOW, LONDON), { ...AROUND, width: 200, rem: 20, daysInRow: 7 }).rows[1];
    const extents = row?.labels.map(({ x, words, anchor }) => {
      const long = words.length * 0.56 * 17.5;
      return anchor === "start" ? [x, x + long] : [x - long, x];
    }) ?? [];

    expect(extents.length).toBeLessThan(3);
    for (const [from = 0, to = 0] of extents) {
      expect(row?.bars.every((bar) => bar.x + bar.width <= from || bar.x >= to)).toBe(true);
    }
  });

  it("carries a bar over the end of a week without closing it", () => {
    const long = load({ state: "cooling", times: { ...times, started_at: "2026-10-31T17:30:00Z", ended_at: "2026-11-02T04:00:00Z" } });
    const [first, second] = drawWeeks(planOf({ kilns: [kiln()], loads: [long], hours, promises: [] }, NOW, LONDON), { ...AROUND, daysInRow: 7 }).rows;

    expect([first?.bars[0]?.isEnded, second?.bars[0]?.isBegun]).toEqual([false, false]);
    expect(second?.labels).toHaveLength(0);
  });
});

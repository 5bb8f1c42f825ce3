import { describe, expect, it } from "vitest";
import { drawDelivery, shortRange } from "./delivery-geometry";
import type { DeliveryPicture } from "./delivery-geometry";

const zone = "Europe/London";
const around = { width: 328, rem: 16, now: new Date("2026-10-31T09:00:00Z"), zone };
const days = { promised: "2026-12-18", likelyFrom: "2026-12-04", likelyMiddle: "2026-12-07", likelyUntil: "2026-12-12" };

function drawn(change: Partial<typeof days> = {}, width = 328): DeliveryPicture {
  const picture = drawDelivery({ ...days, ...change }, { ...around, width });
  if (!picture) throw new Error("There is something to draw.");
  return picture;
}

describe("the delivery drawing", () => {
  it("keeps the likely days, their middle and the promise in the order they come", () => {
    const { box, flag } = drawn();
    expect(box?.left).toBeLessThan(box?.tick ?? 0);
    expect(box?.tick).toBeLessThan(box?.right ?? 0);
    expect(box?.right).toBeLessThan(flag?.x ?? 0);
  });

  it("draws the box as long as its days: nine of them, to the scale of the axis", () => {
    const { box, left, right } = drawn();
    // From 31 Oct 09:00 to 24 Dec 12:00 are 54.125 days.
    const day_px = (right - left) / 54.125;
    expect((box?.right ?? 0) - (box?.left ?? 0)).toBeCloseTo(9 * day_px, 0);
  });

  it("has no tick when the middle guess is not known, and no box when nothing is", () => {
    expect(drawDelivery({ ...days, likelyMiddle: null }, around)?.box?.tick).toBeNull();
    expect(drawDelivery({ promised: "2026-12-18", likelyFrom: null, likelyMiddle: null, likelyUntil: null }, around)?.box).toBeNull();
    expect(drawDelivery({ promised: null, likelyFrom: null, likelyMiddle: null, likelyUntil: null }, around)).toBeNull();
  });

  it("shows a promise whose day is past, left of the likely days", () => {
    const { flag, box, left } = drawn({ promised: "2026-10-20" });
    expect(flag?.x).toBeGreaterThanOrEqual(left);
    expect(flag?.x).toBeLessThan(box?.left ?? 0);
  });

  it("keeps both labels on one line where they have room", () => {
    const { box, flag } = drawn();
    expect([box?.label.words, flag?.label.words]).toEqual(["likely 4–12", "18 Dec"]);
    expect(Math.abs((box?.label.y ?? 0) - (flag?.label.y ?? 0))).toBeLessThan(10);
  });

  it("puts one label over the other where they would touch, and stays within the drawing", () => {
    const { box, flag, height } = drawn({ promised: "2026-12-08" });
    expect(Math.abs((box?.label.y ?? 0) - (flag?.label.y ?? 0))).toBeGreaterThan(14);
    expect(Math.min(box?.label.y ?? 0, flag?.label.y ?? 0)).toBeGreaterThan(10);
    expect(height).toBeGreaterThan(drawn().baseY);
  });

  it("names fewer days on a narrow drawing", () => {
    expect(drawn({}, 170).ticks.length).toBeLessThan(drawn({}, 900).ticks.length);
  });
});

describe("a short range", () => {
  it("names the month once, and both where it changes", () => {
    const at = (day: string): Date => new Date(`${day}T12:00:00Z`);
    expect(shortRange(at("2026-12-04"), at("2026-12-12"), zone)).toBe("4–12 Dec");
    expect(shortRange(at("2026-11-28"), at("2026-12-03"), zone)).toBe("28 Nov–3 Dec");
    expect(shortRange(at("2026-12-04"), at("2026-12-04"), zone)).toBe("4 Dec");
    expect(shortRange(at("2026-12-04"), at("2026-12-12"), zone, true)).toBe("4–12");
  });
});

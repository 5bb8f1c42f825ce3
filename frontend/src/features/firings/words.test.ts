import { describe, expect, it } from "vitest";
import type { ConeSeen } from "../../api/shapes-firings";
import { coneSet } from "./cone-series";
import { conesWords, ranHot, saidByCones } from "./cone-words";
import { fit, kiln, load, PIET } from "./firing-sample";
import { comingEvidence, cutoffWords, fitWords, kilnVerdict, loadVerdict, openingWords, slotWords } from "./load-words";
import { shortly } from "./queue-words";
import { levelName } from "./shelf-words";

const AROUND = { now: new Date("2026-10-31T09:00:00Z"), zone: "Europe/London", units: { length: "mm", mass: "g", temperature: "c" } } as const;
const THIN = "\u202f";
const OPENING = {
  limit_c: 100, early: null, likely: "2026-10-31T21:33:00Z", late: null, staffed_at: "2026-11-02T08:00:00Z", basis: "readings", air_c: 12, k_per_h: 0.155, last_c: 642, last_at: null,
  words: "",
} as const;
const cone = (level: number | null, role: ConeSeen["role"], clock_hand: number | null): ConeSeen => ({
  id: `${String(level)}${role}`, level, role, cone: "6", clock_hand, hand_words: "", words: "", happened_at: "2026-10-31T09:00:00Z",
});

describe("openingWords", () => {
  it("says about when it is likely, and who is in only where that is later", () => {
    expect(openingWords(OPENING, AROUND)).toBe(`likely 100${THIN}°C about 21:30 · somebody in Mon 2 Nov, 08:00`);
    expect(openingWords({ ...OPENING, staffed_at: "2026-10-31T21:33:00Z" }, AROUND)).toBe(`likely 100${THIN}°C about 21:30`);
    expect(openingWords(null, AROUND)).toContain("read it");
  });

  it("is in the person's own degrees", () => {
    expect(openingWords(OPENING, { ...AROUND, units: { ...AROUND.units, temperature: "f" } })).toContain(`212${THIN}°F`);
  });
});

describe("kilnVerdict", () => {
  it("says what it does, what it reads and who watches", () => {
    const doing = { word: "cooling", words: "", till: null, watcher: PIET, load: null, reading: { reading_c: 642, taken_at: "2026-10-31T08:40:00Z" } };

    expect(kilnVerdict(kiln({ doing, opening: OPENING }), AROUND)).toMatchObject({ verdict: `Cooling, 642${THIN}°C`, natch: "guess", evidence: expect.stringContaining("Piet watches") as string });
    expect(kilnVerdict(kiln({ doing: { ...doing, word: "stopped" } }), AROUND)).toMatchObject({ isLive: true, natch: "past" });
    expect(kilnVerdict(kiln(), AROUND).verdict).toBe("Empty");
  });
});

describe("loadVerdict", () => {
  it("names what is next in each state, and an outcome only where there is one", () => {
    expect(loadVerdict(load({ state: "unloaded", outcome: "not_fired" }), AROUND).verdict).toBe("Not fired");
    expect(loadVerdict(load({ state: "unloaded" }), AROUND).verdict).toBe("Outcome not said");
    expect(loadVerdict(load({ state: "firing", watcher: null }), AROUND).evidence).toContain("nobody is named to watch");
  });
});

describe("fitWords", () => {
  it("says fits, doubtful or does not fit; never more before the studio was heard", () => {
    const levels = [{ level: 1, shelf: { shape: "rect", width_mm: 560, depth_mm: 560, thickness_mm: 15 }, floor_mm: 0, height_mm: 150, room_left: { words: "", spots: [] }, items: [{}], posts: [] }];

    // Only how many stand on it is read here.
    expect(fitWords(fit({ levels: levels as unknown as ReturnType<typeof fit>["levels"] }), AROUND.units)).toMatchObject({ verdict: "Fits", evidence: `tallest J05, 129${THIN}mm · 1 level` });
    expect(fitWords(fit({ verdict: "doubtful" }), AROUND.units).verdict).toBe("Doubtful");
    expect(fitWords(fit({ verdict: "does_not_fit" }), AROUND.units)).toMatchObject({ natch: "refused", isLive: true });
    expect(fitWords(null, AROUND.units).verdict).toBe("Not reckoned yet");
  });
});

describe("slots", () => {
  it("name day, month and clock, and until when it is open to all", () => {
    expect(slotWords("2026-11-02T18:00:00Z", AROUND.zone)).toBe("Mon 2 Nov, 18:00");
    const coming = { id: "l", number: "F-211", starts_at: "2026-11-02T18:00:00Z", kind: "bisque", cone: "04", state: "open", cutoff_at: "2026-11-02T16:00:00Z", pieces: 5 };
    expect(comingEvidence(coming, AROUND)).toBe("bisque, cone 04 · 5 pieces · open until Mon 2 Nov, 16:00");
    expect(comingEvidence({ ...coming, cutoff_at: "2026-10-31T08:00:00Z" }, AROUND)).toContain("past its cut-off");
  });

  it("are not said to be open, nor closed at an hour to come, once they were settled before it", () => {
    const slot = { state: "open", cutoff_at: "2026-11-02T16:00:00Z" } as const;

    expect(cutoffWords(slot, AROUND)).toBe("open to all until Mon 2 Nov, 16:00");
    expect(cutoffWords({ ...slot, state: "settled" }, AROUND)).toBe("closed to all since it was settled");
    expect(cutoffWords({ ...slot, state: "called_off" }, AROUND)).toBeUndefined();
    expect(cutoffWords({ state: "settled", cutoff_at: "2026-10-30T16:00:00Z" }, AROUND)).toBe("closed Fri 30 Oct, 16:00");
  });
});

describe("saidByCones", () => {
  it("goes by the last look at each cone of the load: down where its hand has come to 5", () => {
    const [high, low, guard] = [cone(2, "firing", 6), cone(1, "firing", 5), { ...cone(1, "guard", 12), cone: "7" }];

    expect(saidByCones([cone(1, "firing", 2), high, low, guard], "6")).toBe("down");
    expect(saidByCones([high, { ...low, clock_hand: 4 }], "6")).toBe("not_down");
    expect(saidByCones([high], "04")).toBe("unread");
  });
});

describe("ranHot", () => {
  it("says where the guard leans", () => {
    expect(ranHot([1, 2, 3].map((level) => cone(level, "guard", level === 3 ? 3 : 12)))).toBe("ran hot: guard cone leaning on top");
    expect(ranHot([1, 2].map((level) => cone(level, "guard", 2)))).toBe("ran hot: guard cone leaning on all shelves");
  });

  it("says nothing of a guard that stands, or was never set", () => {
    expect(ranHot([cone(1, "guard", 12), cone(2, "guard", 0), cone(1, "firing", 6)])).toBeNull();
    expect(ranHot([cone(1, "firing", 7)])).toBeNull();
  });

  it("stands in the verdict of the load", () => {
    const { verdict } = loadVerdict(load({ state: "unloaded", outcome: "fired", cones: [cone(1, "guard", 3)] }), AROUND);

    expect(verdict).toBe("Fired, ran hot");
  });
});

describe("conesWords", () => {
  it("names shelves that stand alike together, the firing cone first", () => {
    const seen = [cone(1, "firing", 6), cone(2, "firing", 7), cone(3, "firing", 7), cone(3, "guard", 3), cone(1, "guide", null)];

    expect(conesWords(seen)).toEqual({ value: "Top and middle flat, bottom down", note: "guard top at 3" });
  });

  it("says once what is so on all shelves, and nothing where nobody looked", () => {
    expect(conesWords([1, 2, 3].map((level) => cone(level, "guide", 12)))?.value).toBe("Guide upright on all shelves");
    expect(conesWords([cone(1, "firing", null)])).toBeNull();
  });
});

describe("coneSet", () => {
  it("takes the next cooler and the next hotter, over the turn from zeros to plain figures", () => {
    expect(coneSet("04")).toEqual({ guide: "05", firing: "04", guard: "03" });
    expect(coneSet("01").guard).toBe("1");
    expect(coneSet("6")).toEqual({ guide: "5", firing: "6", guard: "7" });
    expect(coneSet("x")).toEqual({ guide: null, firing: "x", guard: null });
  });
});

describe("words beside a mark", () => {
  it("are short: one sentence, without the mark again", () => {
    expect(shortly("L06: 20 mm at its thickest; the studio's limit is 12 mm. It dries slower.", "L06")).toBe("20 mm at its thickest");
    expect(shortly("Nobody has felt it bone dry or weighed it.", "T24")).toBe("Nobody has felt it bone dry or weighed it");
  });

  it("name shelves as one says it before the kiln", () => {
    expect([levelName(1, 1), levelName(2, 2), levelName(2, 3), levelName(2, 5)]).toEqual(["The shelf", "Upper shelf", "Middle shelf", "Shelf 2 of 5"]);
  });
});

import { describe, expect, it } from "vitest";
import type { KeptAct } from "../../offline/kept-act";
import type { ScreenAct } from "../common/use-outbox";
import { event, kiln, kilns, load, PIET, placement, reading } from "./firing-sample";
import { conesAct, eventAct, mendedReading, placingAct, readingAct, removalAct } from "./load-acts";
import { kilnsView, levelOf, loadView } from "./load-overlay";

let order = 0;
function kept(given: ScreenAct, more: Partial<KeptAct> = {}): KeptAct {
  order += 1;
  const made_at = given.happenedAt?.toISOString() ?? "2026-10-31T09:00:00.000Z";
  const { basedOn, happenedAt, corrects, path, fields, verb, about, words } = given;
  return {
    order, id: `act-${String(order)}`, username: "piet", slug: "barn", path, verb, about, words, creates: [], photo: null, made_at, state: "waiting", tries: 0, waitUntil: 0,
    isWaitAsked: false, seq: null, problem: null,
    body: { ...fields, happened_at: happenedAt?.toISOString() ?? made_at, based_on: basedOn, ...(corrects ? { corrects } : {}) }, ...more,
  };
}

const answer = (more: Parameters<typeof load>[0] = {}) => ({ at: "2026-10-31T09:00:00Z", journal_seq: 100, load: load(more) });
const LOAD = { id: "l1", number: "F-211" };

describe("loadView", () => {
  it("takes a load on by what was told here, with what can follow", () => {
    const { load: now } = loadView(answer({ state: "loading" }), [kept(eventAct(LOAD, "started", 100))], PIET);

    expect(now.state).toBe("firing");
    expect(now.times.started_at).toBe("2026-10-31T09:00:00.000Z");
    expect(now.nexts).toEqual(["ended", "stopped"]);
    expect(now.events.at(-1)).toMatchObject({ kind: "started", member: PIET });
  });

  it("sets a reading on the curve at the hours that really passed", () => {
    const lit = answer({ state: "firing", times: { ...load().times, started_at: "2026-10-31T07:30:00Z" } });

    const { load: now, keptIds } = loadView(lit, [kept(readingAct(LOAD, { value: "900 °F", celsius: 482.2, set: null, said: "900 °F" }, 100))], PIET);

    expect(now.readings).toMatchObject([{ elapsed_h: 1.5, reading_c: 482.2, use: "taken" }]);
    expect(keptIds.has(now.readings[0]?.id ?? "")).toBe(true);
  });

  it("lets a mended reading stand for the one it corrects", () => {
    const odd = reading(4, 2232, { use: "asked", instead_c: 1222.2 });

    const { load: now } = loadView(answer({ readings: [odd] }), [kept(mendedReading(LOAD, odd, 1222.2, "1222 °C", 100))], PIET);

    expect(now.readings.map(({ reading_c }) => reading_c)).toEqual([1222.2]);
  });

  it("shows cones as they were read here", () => {
    const seen = conesAct(LOAD, [{ level: 2, role: "firing", cone: "04", hand: 6 }], 100);

    const { load: now } = loadView(answer(), [kept(seen)], PIET);

    expect(now.cones).toMatchObject([{ level: 2, role: "firing", cone: "04", clock_hand: 6 }]);
  });

  it("asks for ware, and never shows it as placed before the studio has said so", () => {
    const { load: now, asked } = loadView(answer(), [kept(placingAct(LOAD, [{ id: "x1", mark: "L06" }], 100))], PIET);

    expect(asked).toMatchObject([{ marks: "L06", isKept: true }]);
    expect(now.placements).toHaveLength(2);
  });

  it("takes off what was taken off here", () => {
    const { load: now } = loadView(answer(), [kept(removalAct(LOAD, { id: "p-J05", mark: "J05", pieceId: "x-J05" }, 100))], PIET);

    expect(now.placements.map(({ id }) => id)).toEqual(["p-T21"]);
  });

  it("shows an event as taken back once that was told here", () => {
    const undo = kept({ path: "retractions/", fields: {}, corrects: "e-started", verb: "retracted", about: { corrects: "e-started" }, words: "", basedOn: 100 });

    const { load: now } = loadView(answer({ events: [event("started", "2026-10-31T07:30:00Z")] }), [undo], PIET);

    expect(now.events[0]?.is_taken_back).toBe(true);
  });

  it("leaves alone what is heard and shown, parked, or about another load", () => {
    const acts = [
      kept(eventAct(LOAD, "settled", 100), { state: "heard", seq: 90 }),
      kept(eventAct(LOAD, "settled", 100), { state: "parked" }),
      kept(eventAct({ id: "l2", number: "F-212" }, "settled", 100)),
      kept(conesAct({ id: "l2", number: "F-212" }, [], 100)),
    ];

    expect(loadView(answer(), acts, PIET).load.state).toBe("open");
  });
});

describe("kilnsView", () => {
  const firing = kiln({ doing: { ...kiln().doing, word: "loading", words: "loading", load: { id: "l1", number: "F-211", starts_at: "2026-11-02T18:00:00Z" } } });

  it("takes the kiln of a load on with it", () => {
    const { kilns: [now] } = kilnsView(kilns(firing), [kept(eventAct(LOAD, "started", 100)), kept(readingAct(LOAD, { value: 85, celsius: 85, set: null, said: "85 °C" }, 100))]);

    expect(now?.doing).toMatchObject({ word: "firing", reading: { reading_c: 85 } });
  });

  it("empties it when the load is out", () => {
    const { kilns: [now] } = kilnsView(kilns(firing), [kept(eventAct(LOAD, "called_off", 100, { reason: "fan dead" }))]);

    expect(now?.doing).toMatchObject({ word: "empty", load: null });
  });

  it("lists a load asked for here until the studio numbers it", () => {
    const asked = kept({
      path: "loads/", fields: { starts_at: "2026-11-09T18:00:00Z" }, verb: "opened_load", about: { kiln_id: "k1", what: "bisque, cone 04" }, words: "New load", basedOn: 100,
    });

    expect(kilnsView(kilns(firing), [asked]).opened).toMatchObject([{ words: "bisque, cone 04", startsAt: "2026-11-09T18:00:00Z", isKept: true }]);
  });
});

describe("levelOf", () => {
  it("is where the picture has it, else where somebody placed it", () => {
    const levels = [{ level: 2, items: [{ placement_id: "p-T21" }] }];

    expect(levelOf(placement("T21", { level: 1 }), levels)).toBe(2);
    expect(levelOf(placement("J05", { level: 1 }), levels)).toBe(1);
    expect(levelOf(placement("J06"), levels)).toBeNull();
  });
});

import { describe, expect, it } from "vitest";
import type { Reminder } from "../../api/shapes-studio";
import type { KeptAct } from "../../offline/kept-act";
import { answersOf, reminderWords, snoozes, stillDue, wayOf } from "./due-view";

const LONDON = "Europe/London";
const NOW = new Date("2026-10-31T09:00:00Z");
const reminder = (change: Partial<Reminder> = {}): Reminder => ({
  id: "r1", kind: "untouched", class: "C", title: "F07 not touched for 9 days", body: "Tucked in, on Rack A2.", link: "/pieces/p7", due_at: "2026-10-31T07:45:00Z",
  state: "due", snoozes: 0, snoozed_until: null, objects: [{ kind: "piece", id: "p7", mark: "F07" }], asks: null, ...change,
});
// Only these fields are read here.
const kept = (change: Partial<KeptAct>): KeptAct => ({ id: "k1", verb: "answered_reminder", about: { reminder_id: "r1" }, body: {}, state: "waiting", ...change }) as KeptAct;

describe("answers", () => {
  it("take a reminder off the list before the studio has heard", () => {
    expect(stillDue([reminder(), reminder({ id: "r2" })], answersOf([kept({})])).map((one) => one.id)).toEqual(["r2"]);
  });

  it("do not count when undone or not taken", () => {
    expect(answersOf([kept({}), kept({ id: "k2", verb: "retracted", about: {}, body: { corrects: "k1" } })]).size).toBe(0);
    expect(answersOf([kept({ state: "parked" })]).size).toBe(0);
  });
});

describe("snoozes", () => {
  it("come back in the morning, by the studio's clock, also over a change of the clocks", () => {
    // British summer time ended on 25 October 2026: Summer Time Order 2002 (SI 2002/262).
    const before = snoozes(new Date("2026-10-24T20:00:00Z"), LONDON);

    expect(before.map((one) => one.until.toISOString())).toEqual([
      "2026-10-24T20:30:00.000Z", "2026-10-24T22:00:00.000Z", "2026-10-25T06:30:00.000Z", "2026-10-31T07:30:00.000Z",
    ]);
  });
});

describe("reminderWords", () => {
  it("says what, where and when", () => {
    expect(reminderWords(reminder(), NOW, LONDON)).toMatchObject({ mark: "F07", natch: "hand", evidence: "Tucked in, on Rack A2. · 07:45" });
    expect(reminderWords(reminder({ class: "A" }), NOW, LONDON).natch).toBe("past");
  });

  it("says until when it is put off, and how it ended", () => {
    expect(reminderWords(reminder({ state: "snoozed", snoozed_until: "2026-11-01T07:30:00Z" }), NOW, LONDON).evidence).toBe("Tucked in, on Rack A2. · again Sun 1 Nov, 07:30");
    expect(reminderWords(reminder({ state: "let_go" }), NOW, LONDON)).toMatchObject({ natch: "done", evidence: "Tucked in, on Rack A2. · let go" });
  });
});

describe("wayOf", () => {
  it("follows only ways within the app", () => {
    expect(wayOf(reminder())).toBe("/pieces/p7");
    expect(wayOf(reminder({ link: "//elsewhere.example" }))).toBeNull();
    expect(wayOf(reminder({ link: "" }))).toBeNull();
  });
});

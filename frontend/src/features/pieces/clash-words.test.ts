import { describe, expect, it } from "vitest";
import type { ClashAct, ClashAnswer } from "../../api/shapes-pieces";
import { askedWords, choiceWords, halfOf, meanwhile, whyTwo } from "./clash-words";

const WHEN = { now: new Date("2026-10-31T09:00:00Z"), zone: "Europe/London" };
const JUN = { id: "m1", first_name: "Jun", initials: "JH" };
const BRAM = { id: "m2", first_name: "Bram", initials: "BT" };
const scrapped: ClashAct = {
  id: "a1", verb: "scrapped", words: "scrapped: corner crack", detail: "", happened_at: "2026-10-30T16:50:00Z", written_at: "2026-10-30T17:40:00Z",
  member: JUN, device: "Jun’s phone", facts: {},
};
const glazed: ClashAct = {
  ...scrapped, id: "a2", verb: "came_to", words: "glazed", detail: "to Rack C3", happened_at: "2026-10-30T17:20:00Z", written_at: "2026-10-31T08:15:00Z",
  member: BRAM, device: "shed phone",
};
const clash = (acts: ClashAct[]): ClashAnswer => ({
  id: "c1", at: "2026-10-31T09:00:00Z", journal_seq: 1, kind: "ended_or_moved", state: "open", subject: { kind: "piece", id: "p", mark: "T18", noun: "tile" },
  opened_at: "2026-10-31T08:15:00Z", stands_meanwhile: { stage: "bisque", state: "bisqued", words: "bisqued", place: { id: "c", name: "Rack C1" } },
  holds: ["placement"], asked: [], acts, choices: [], may_answer: true,
});

describe("a clash", () => {
  it("gives both halves the same lines", () => {
    expect(halfOf(scrapped, WHEN)).toEqual({ word: "Scrapped", lines: ["corner crack", "", "Fri 30, 16:50", "Jun, Jun’s phone", "heard yesterday, 17:40"] });
    expect(halfOf(glazed, WHEN)).toEqual({ word: "Glazed", lines: ["", "to Rack C3", "Fri 30, 17:20", "Bram, shed phone", "heard 08:15"] });
  });

  it("says why nobody noticed", () => {
    const heard = { ...glazed, written_at: "2026-10-30T17:20:20Z" };

    expect(whyTwo([scrapped, glazed])).toBe("two phones, neither had signal");
    expect(whyTwo([scrapped, heard])).toBe("two phones, one had no signal");
    expect(whyTwo([heard, { ...heard, device: heard.device }])).toBe("one phone");
  });

  it("names each answer by whose story it is", () => {
    expect(choiceWords(clash([scrapped, glazed]), "first")).toBe("Jun’s stands");
    expect(choiceWords(clash([scrapped, glazed]), "both")).toBe("Both happened");
    expect(choiceWords(clash([scrapped, { ...glazed, member: JUN }]), "second")).toBe("Glazed stands");
  });

  it("says what counts until somebody answers", () => {
    expect(meanwhile(clash([]))).toBe("T18 counts as bisqued, on Rack C1, and cannot go on a load.");
  });

  it("says of a load only what it counts as", () => {
    const load = { ...clash([]), kind: "two_load_stories", subject: { kind: "load", id: "l", mark: "F-212", noun: "glaze load" }, stands_meanwhile: { stage: "glaze", state: "called_off", words: "called off", place: null } };

    expect(meanwhile(load)).toBe("F-212 counts as called off, and its ware stays where it is.");
    expect(meanwhile({ ...clash([]), kind: "two_kilns" })).toBe("T18 stands on both loads.");
  });

  it("names who is asked", () => {
    expect(askedWords(["Jun", "Bram", "Odile"])).toBe("Jun, Bram or Odile");
    expect(askedWords([])).toBe("an owner");
  });
});

import { describe, expect, it } from "vitest";
import { THIN } from "../../domain/format";
import type { BenchRow, JoinRow, MouldRow } from "../../api/shapes";
import { pieceLine } from "./bench-overlay";
import type { Said } from "./bench-overlay";
import { dryingRow, hours, joinRow, mouldRow, NOW, row, ZONE } from "./bench-sample";
import { nounOf, wordsOf } from "./bench-words";
import type { LineWords } from "./bench-words";

const plain = (words: LineWords): LineWords => ({ ...words, evidence: words.evidence.replaceAll(THIN, " "), spoken: words.spoken.replaceAll(THIN, " "), verdict: words.verdict.replaceAll(THIN, " ") });
const piece = (of: BenchRow, said: Said | null = null): LineWords => plain(wordsOf(pieceLine(of, said), NOW, ZONE));
const join = (of: JoinRow): LineWords => plain(wordsOf({ kind: "join", key: "k", row: of, said: null }, NOW, ZONE));
const mould = (of: MouldRow): LineWords => plain(wordsOf({ kind: "mould", key: "k", row: of, said: null }, NOW, ZONE));
const said = (verb: Said["verb"], more: Partial<Said> = {}): Said => ({ actId: "a", verb, at: new Date("2026-10-31T09:04:00Z"), how: null, isKept: true, ...more });

describe("a part in its mould", () => {
  it("past its time says so first, then why", () => {
    expect(piece(row("T26"))).toMatchObject({ verdict: "Past its time", evidence: "in mould 16½ h · M02 · Bench 1", natch: "past", isLive: true });
  });

  it("is one sentence to who listens", () => {
    expect(piece(row("T26")).spoken).toBe("T26, tile, in mould 16½ h, past its time. M02, Bench 1.");
  });

  it("only past its time is live", () => {
    expect(piece(row("J08", { verdict: "in_window" }))).toMatchObject({ verdict: "In its window", natch: "hand", isLive: false });
  });

  it("later says from when, and which press the mould is on", () => {
    const opens = { p10: hours(0.5), p50: hours(0.95), p90: hours(2), p_never: 0 };

    expect(piece(row("T25", { verdict: "later", window: { opens, closes: null } }))).toMatchObject({
      verdict: "From about 10:00", evidence: "M02, second press · Bench 1", natch: "next",
    });
  });

  it("told not yet says when to look again, until that time", () => {
    expect(piece(row("J08", { verdict: "later", look_again_at: hours(2.1) })).verdict).toBe("Look again about 11");
    expect(piece(row("J08", { verdict: "in_window", look_again_at: hours(-0.5) })).verdict).toBe("In its window");
  });

  it("that nothing is known of asks for a finger, not for trust", () => {
    expect(piece(row("J08", { verdict: "asked", window: null }))).toMatchObject({ verdict: "Feel it", natch: "guess" });
  });

  it("of somebody else names them", () => {
    expect(piece(row("T25", { verdict: "later", mine: false })).evidence).toBe("M02, second press · Bench 1 · Nell");
  });

  it("with two stories says that before all else", () => {
    expect(piece(row("T18", { clash_id: "c" }))).toMatchObject({ verdict: "Two stories", natch: "two" });
  });
});

describe("what was just said", () => {
  it("gives its time, that it is kept here, and which mould is free", () => {
    expect(piece(row("T26"), said("demoulded"))).toMatchObject({ verdict: "Out 09:04", evidence: "kept here · M02 free", natch: "kept", isLive: false });
  });

  it("turns to a hollow once it is heard", () => {
    expect(piece(row("T26"), said("stuck", { how: "hooked_edge", isKept: false }))).toMatchObject({ verdict: "Stuck 09:04", evidence: "hooked edge", natch: "done" });
  });
});

describe("a drying piece", () => {
  it("says between which days, and that it is only likely", () => {
    const ready = { p10: "2026-11-02T10:00Z", p50: "2026-11-03T10:00Z", p90: "2026-11-04T10:00Z", p_never: 0 };

    expect(piece(dryingRow("J06", { ready_at: ready }))).toMatchObject({ verdict: "Mon 2 to Wed 4 Nov", evidence: "likely dry · Bench 1" });
  });

  it("whose end is out of sight says how it dries, and since when", () => {
    const words = piece(dryingRow("I01", { ready_at: { p10: null, p50: null, p90: null, p_never: 1 }, piece: { ...row("I01").piece, state_words: "drying, loosely covered" } }));

    expect(words).toMatchObject({ verdict: "Drying, loosely covered", evidence: "26 h · Bench 1", natch: "guess" });
  });

  it("with only a beginning says from when", () => {
    const ready = { p10: "2026-11-02T10:00Z", p50: null, p90: null, p_never: 0.3 };

    expect(piece(dryingRow("I01", { ready_at: ready })).verdict).toBe("From Mon 2 Nov");
  });

  it("is never called dry by reckoning alone", () => {
    expect(piece(dryingRow("J06", { verdict: "worth_a_touch" }))).toMatchObject({ verdict: "Worth a touch", natch: "hand" });
    expect(piece(dryingRow("J06", { verdict: "not_in_this_room" })).verdict).toBe("Not in this room");
  });
});

describe("nounOf", () => {
  it("is the part where the part says more", () => {
    expect(nounOf(row("S04", { piece: { ...row("S04").piece, noun: "sauce boat" }, part: { id: "b", role: "body", state: "in_mould" } }))).toBe("body");
    expect(nounOf(row("L08", { piece: { ...row("L08").piece, noun: "its lid" }, part: { id: "l", role: "lid", state: "in_mould" } }))).toBe("its lid");
  });
});

describe("a piece to join", () => {
  it("names its parts and until when", () => {
    expect(join(joinRow("S04"))).toMatchObject({ verdict: "Join now", evidence: "body + handle · until about 13:00", natch: "hand" });
    expect(join(joinRow("S04", { verdict: "too_stiff" })).verdict).toBe("Feel it first");
  });
});

describe("a mould", () => {
  it("that is dry, or usable with its water", () => {
    expect(mould(mouldRow("M09"))).toMatchObject({ verdict: "Dry", evidence: "Shelf P1", natch: "next" });
    expect(mould(mouldRow("M10", { dryness: { word: "usable", free_water_fraction: 0.058, presses_since_dry: 2 } }))).toMatchObject({
      verdict: "Usable, 6 % water", evidence: "2 presses since dry · Shelf P1",
    });
  });

  it("that may not be pressed says why", () => {
    expect(mould(mouldRow("M11", { may_press: false, reason: "M12 is out of use: edge chipped" }))).toMatchObject({
      verdict: "Not now", evidence: "M12 is out of use: edge chipped", natch: "done",
    });
  });
});

describe("a cover that is due", () => {
  const step = { at: hours(0), cover: "loose" as const, part_ids: ["h"], words: "cover the handle loosely" };

  it("is the verdict of what dries, in its place and as it stands", () => {
    expect(piece(dryingRow("S03", { cover_next: step }))).toMatchObject({ verdict: "Cover the handle loosely", natch: "hand" });
  });

  it("offers the cover that makes a short window longer", () => {
    const step = { at: hours(0), cover: "tucked" as const, part_ids: ["h"], words: "wrap the handle" };

    expect(join(joinRow("S04", { cover_next: step })).evidence).toBe("body + handle · until about 13:00 · or wrap the handle");
    expect(join(joinRow("S04", { cover_next: { ...step, at: hours(3) } })).evidence).toBe("body + handle · until about 13:00");
  });

  it("comes before the joining of parts that must wait, which say from when", () => {
    const opens = { p10: hours(0.5), p50: hours(0.95), p90: hours(2), p_never: 0 };
    const waits = { verdict: "wait" as const, window: { opens, closes: null } };

    expect(join(joinRow("S04", waits)).verdict).toBe("From about 10:00");
    expect(join(joinRow("S04", { ...waits, cover_next: step })).verdict).toBe("Cover the handle loosely, then from about 10:00");
  });
});

import { describe, expect, it } from "vitest";
import { THIN } from "../../domain/format";
import { partSample, pieceSample, tellingSample } from "./piece-sample";
import { partWords, standing, storyLine, titleNote } from "./piece-words";

const WHEN = { now: new Date("2026-10-31T09:00:00Z"), zone: "Europe/London" };

describe("standing", () => {
  it("says the state, since when, where and whose", () => {
    expect(standing(pieceSample(), null, WHEN)).toEqual({ verdict: "In mould", evidence: `3${THIN}h · Bench 2 · Jun` });
    expect(standing(pieceSample({ place: null }), null, WHEN).evidence).toBe(`3${THIN}h · no place said · Jun`);
  });
});

describe("titleNote", () => {
  it("names what stands with it", () => {
    const { piece } = pieceSample({ mark: "L06", noun: "lid", state_words: "bone dry" });

    expect(titleNote(pieceSample({ noun: "jar" }, { partners: [{ ...piece, seat_gap_mm: null }] }))).toBe("jar, lid L06 is bone dry");
    expect(titleNote(pieceSample())).toBe("sauce boat");
  });
});

describe("partWords", () => {
  it("gives the mould with its generation, and the block", () => {
    expect(partWords(partSample(), WHEN)).toMatchObject({ words: `In mould 17${THIN}h`, mould: "M03, generation 1 · block BK-15", setId: "set3" });
    expect(partWords(partSample({ state: "out", out_at: "2026-10-30T09:00:00Z" }), WHEN, true).words).toBe("Out of its mould");
    expect(partWords(partSample({ mould: null, slab_block: null, state: "joined" }), WHEN)).toMatchObject({ words: "Joined", mould: "", setId: null });
  });
});

describe("storyLine", () => {
  it("shows both times of a late entry and only one of any other", () => {
    const late = tellingSample({ happened_at: "2026-10-18T07:40:00Z", written_at: "2026-10-19T07:05:00Z", is_late: true });

    expect(storyLine(late, WHEN)).toMatchObject({ day: "Sun 18", clock: "08:40", written: "written Mon 19, 08:05" });
    expect(storyLine(tellingSample(), WHEN)).toMatchObject({ day: "today", clock: "08:00", written: null });
  });

  it("says who took it back, who settled that it was not so, and what was said too late to count", () => {
    const bram = { id: "m2", first_name: "Bram", initials: "BT" };

    expect(storyLine(tellingSample({ is_taken_back: true, taken_back_by: bram }), WHEN).gone).toBe("taken back by Bram");
    expect(storyLine(tellingSample({ left_out_by: bram }), WHEN).gone).toBe("not so, settled by Bram");
    expect(storyLine(tellingSample(), WHEN).gone).toBeNull();
    expect(storyLine(tellingSample({ is_also_said: true, words: "not yet" }), WHEN).words).toBe("Also said: not yet");
  });
});

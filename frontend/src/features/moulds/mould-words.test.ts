import { describe, expect, it } from "vitest";
import type { MouldPartRow, MouldSetAnswer } from "../../api/shapes-moulds";
import { blockOptions, castingWords, nextHolder, partsWords, wearWords } from "./mould-words";

const LONDON = "Europe/London";
const NOW = new Date("2026-10-31T09:00:00Z");
const JUN = { id: "m1", first_name: "Jun", initials: "JH" };
const part = (name: string, state: MouldPartRow["state"] = "whole", state_reason = ""): MouldPartRow => ({
  id: name, name, state, state_reason, presses: 22, presses_before: 0, presses_before_by: null,
});

describe("partsWords", () => {
  it("counts what is there and names the worst", () => {
    expect(partsWords([part("front"), part("back")])).toBe("2 of 2 parts, whole");
    expect(partsWords([part("front", "chipped", "edge"), part("back", "missing")])).toBe("1 of 2 parts; back missing");
    expect(partsWords([part("one", "out_of_use", "edge chipped")])).toBe("1 of 1 part; one out of use: edge chipped");
  });
});

describe("wearWords", () => {
  it("says what its own limits say", () => {
    // The rest of the answer is not read here.
    const set = (presses: number) => ({ presses, inspect_at_presses: 40, retire_at_presses: 120 }) as MouldSetAnswer;

    expect(wearWords(set(22))).toEqual({ value: "22 presses", note: "look at the detail at 40 · pour anew at 120" });
    expect(wearWords(set(131)).note).toBe("look at the detail since 40 · pour anew since 120");
  });
});

describe("nextHolder", () => {
  const booking = (from_at: string, until_at: string) => ({ id: "b", mould_set_id: "s", member: JUN, from_at, until_at, given_up_at: null });

  it("says from when, or until when once it has begun", () => {
    expect(nextHolder(booking("2026-10-31T14:00:00Z", "2026-10-31T18:00:00Z"), "me", NOW, LONDON)).toBe("Jun has it from 14:00");
    expect(nextHolder(booking("2026-10-31T08:00:00Z", "2026-11-01T18:00:00Z"), "m1", NOW, LONDON)).toBe("You have it until Sun 1 Nov, 18:00");
  });
});

describe("castingWords", () => {
  it("tells the line from the master", () => {
    const casting = {
      id: "c", mould_set_id: "s", master: { id: "ms", label: "MS-1", is_ready: true }, generation: 2, poured_at: "2026-09-28T10:00:00Z",
      is_in_use: true, capacity_fraction: 0.43, dry_g: 2280, now_g: 2405, weighed_at: null,
    };

    expect(castingWords(casting, NOW, LONDON)).toEqual({ value: "Generation 2", note: "from MS-1 · poured Mon 28 Sep · in use" });
  });
});

describe("blockOptions", () => {
  it("shows the six newest, the newest last, with their dates", () => {
    const blocks = ["2026-09-22", "2026-10-28", "2026-10-12", null, null, null, null].map((laid_on, place) => ({ id: String(place), label: `BK-${String(place)}`, laid_on, used_up_at: null, cautions: [], batches: [], bodies: [] }));

    expect(blockOptions(blocks, NOW, LONDON).map((option) => option.value).at(-1)).toBe("1");
    expect(blockOptions(blocks, NOW, LONDON)).toHaveLength(6);
    expect(blockOptions(blocks.slice(1, 2), NOW, LONDON)[0]).toEqual({ value: "1", words: "BK-1", note: "Wed 28" });
  });
});

import { describe, expect, it } from "vitest";
import type { DryingAnswer } from "../../api/shapes-pieces";
import { coveringFacts, stepWords } from "./covering-words";

const NOW = new Date("2026-10-31T09:00:00Z");
const ZONE = "Europe/London";
const at = (hours: number): string => new Date(NOW.getTime() + hours * 3_600_000).toISOString();

function covering(change: Partial<DryingAnswer["covering"]> = {}): DryingAnswer["covering"] {
  return { cracking: { now: "low", peak: "low", reason: "Skin and inside dry together.", note: "A rule of thumb." }, steps: [], meeting: null, thin: null, ...change };
}

describe("coveringFacts", () => {
  it("says nothing of a piece that may dry as it stands", () => {
    expect(coveringFacts(covering(), NOW, ZONE)).toEqual([]);
    expect(coveringFacts(covering({ cracking: null }), NOW, ZONE)).toEqual([]);
  });

  it("says how near to cracking it comes, and why, in words and without a number", () => {
    const cracking = { now: "low", peak: "high", reason: "Its skin dries well before the inside: open.", note: "" } as const;

    const [fact] = coveringFacts(covering({ cracking }), NOW, ZONE);

    expect(fact).toEqual({ label: "may crack", value: "High", note: "low now · Its skin dries well before the inside: open." });
  });

  it("puts the next change of the cover first and the others after it", () => {
    const steps = [{ at: at(5), cover: "loose", part_ids: ["handle"], words: "cover the handle loosely" }, { at: at(29), cover: "open", part_ids: [], words: "open" }] as const;

    const [fact] = coveringFacts(covering({ steps: steps.map((step) => ({ ...step, part_ids: [...step.part_ids] })) }), NOW, ZONE);

    expect(fact?.value).toBe("Cover the handle loosely about 14:00");
    expect(fact?.note).toBe("then open Sun 1 Nov");
  });

  it("tells when parts meet and what brings them together", () => {
    const meeting = { opens: at(2), closes: at(6), words: "Cover the handle loosely now, so that they come to leather-hard together." };

    const [fact] = coveringFacts(covering({ meeting }), NOW, ZONE);

    expect(fact).toEqual({ label: "join", value: "From about 11:00 until about 15:00", note: meeting.words });
  });

  it("names no time where the parts do not meet", () => {
    const [fact] = coveringFacts(covering({ meeting: { opens: null, closes: null, words: "Feel them." } }), NOW, ZONE);

    expect(fact?.value).toBe("Feel them first");
  });
});

describe("stepWords", () => {
  it("says now for what is due", () => {
    expect(stepWords({ at: at(0.2), cover: "loose", part_ids: [], words: "cover loosely" }, NOW, ZONE)).toBe("cover loosely now");
  });
});

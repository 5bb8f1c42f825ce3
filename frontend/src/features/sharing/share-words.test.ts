import { describe, expect, it } from "vitest";
import type { Approval, OrderLink } from "../../api/shapes-orders";
import { approvalWords, isWhole, linkWords, wanted } from "./share-words";

const ZONE = "Europe/London";
const NOW = new Date("2026-10-31T09:00:00Z");
const odile = { id: "o", first_name: "Odile", initials: "OF" };

const link: OrderLink = {
  id: "k", kind: "client", shows: ["counts"], shown_photo_ids: [], people: "initials", made_at: "2026-10-24T17:07:00Z", made_by: odile,
  expires_at: "2026-12-01T00:00:00Z", revoked_at: null, state: "live", opened_times: 0, opened_at: [],
};
const approval: Approval = {
  id: "a", about: "colour", title: "Colour to approve", question: "", waits: "glazing", waits_words: "before it is glazed", due_date: "2026-11-06",
  asked_at: "2026-10-29T17:20:00Z", asked_by: odile, clay_words: "", message: "", answer: null,
};

describe("a link in words", () => {
  it("names its last day, not the midnight after it", () => {
    expect(linkWords(link, NOW, ZONE).verdict).toMatch(/^Opens until .*30 Nov/);
  });

  it("says how often it was opened and when last", () => {
    const opened = { ...link, opened_times: 2, opened_at: ["2026-10-30T20:30:00Z", "2026-10-28T10:00:00Z"] };

    expect(linkWords(link, NOW, ZONE).evidence).toContain("not opened yet");
    expect(linkWords(opened, NOW, ZONE).evidence).toMatch(/opened 2 times, last yesterday,? 20:30/);
  });

  it("is a hollow once it was revoked", () => {
    const { natch, verdict } = linkWords({ ...link, state: "revoked", revoked_at: "2026-10-30T10:00:00Z" }, NOW, ZONE);

    expect(natch).toBe("done");
    expect(verdict).toMatch(/^Revoked/);
  });
});

describe("an approval in words", () => {
  it("wants a hand until it is answered", () => {
    expect(approvalWords(approval, new Date("2026-11-06T12:00:00Z"), NOW, ZONE)).toMatchObject({ label: "by Fri 6 Nov", natch: "hand", verdict: "Colour to approve" });
  });

  it("says what the client wrote with it", () => {
    const said = { ...approval, answer: { id: "s", answer: "no", through: "link", words: "the client said no", client_words: "Too dark.", happened_at: "2026-10-30T10:00:00Z", member: null } } as const;

    const words = approvalWords(said, null, NOW, ZONE);

    expect(words.verdict).toBe("The client said no");
    expect(words.evidence).toContain("Too dark.");
    expect(words.natch).toBe("done");
  });
});

describe("what a link is asked to show", () => {
  const choice = { kind: "client", shows: new Set(["history", "counts"]), photos: new Set(["p"]), people: "nobody", until: "2026-11-30" } as const;

  it("is in the order of the page", () => {
    expect(wanted(choice)).toEqual({ kind: "client", people: "nobody", expires_on: "2026-11-30", shows: ["counts", "history"], shown_photo_ids: ["p"] });
  });

  it("is the kept history alone for a visitor", () => {
    expect(wanted({ ...choice, kind: "visitor" })).toMatchObject({ shows: [], shown_photo_ids: [] });
    expect(isWhole(wanted({ ...choice, kind: "visitor" }))).toBe(true);
  });

  it("is not whole without a day, or with nothing chosen", () => {
    expect(isWhole(wanted({ ...choice, until: "" }))).toBe(false);
    expect(isWhole(wanted({ ...choice, shows: new Set(), photos: new Set() }))).toBe(false);
    expect(isWhole(wanted(choice))).toBe(true);
  });
});

import { describe, expect, it } from "vitest";
import type { FeesAnswer } from "../../api/shapes-firings";
import { feesVerdict, minorOf, moneyWords, shareWords } from "./fee-words";

const FEES: FeesAnswer = {
  at: "", journal_seq: 1, load: { id: "l1", number: "F-209", starts_at: "" }, stage: "due", words: "", currency: "GBP", measured: "dry", per_litre_minor: 260, cost_minor: null,
  shares: [], total_minor: 1313, recorded: null, may_record: true,
};

describe("moneyWords", () => {
  it("has as many places as the currency", () => {
    expect(moneyWords(1313, "GBP")).toBe("£13.13");
    expect(moneyWords(1313, "JPY")).toContain("1,313");
  });
});

describe("minorOf", () => {
  it.each([["13.13", 1313], ["£13", 1300], ["13,5", 1350], ["0", 0]])("reads %s", (typed, minor) => {
    expect(minorOf(typed, "GBP")).toBe(minor);
  });

  it.each(["", "a lot", "1.2.3"])("is none for %j", (typed) => {
    expect(minorOf(typed, "GBP")).toBeNull();
  });
});

describe("feesVerdict", () => {
  it("says the sum and what it rests on", () => {
    expect(feesVerdict(FEES)).toEqual({ verdict: "Due: £13.13", evidence: "£2.60 a litre · measured dry" });
    expect(feesVerdict({ ...FEES, cost_minor: 2000 }).evidence).toBe("a cost of £20.00 shared by volume · measured dry");
  });

  it("names no sum to who sees only their own, and none where nothing was fired", () => {
    expect(feesVerdict({ ...FEES, total_minor: null }).verdict).toBe("Due");
    expect(feesVerdict({ ...FEES, stage: "nothing", total_minor: 0 }).verdict).toBe("Nothing to pay");
  });
});

describe("shareWords", () => {
  const line = { placement_id: "p", mark: "B03", count: 1, box: null, litres: 5, which: "first glaze firing", is_charged: true, minor: 1313 };

  it("says what is not charged", () => {
    const share = { person: null, mine: true, litres: 5, minor: 1313, lines: [line, { ...line, placement_id: "q", is_charged: false }] };

    expect(shareWords(share, "GBP")).toEqual({ verdict: "£13.13", evidence: "5\u202fl · 2 pieces · 1 not charged, as not fired" });
  });

  it("says litres where there is no tariff", () => {
    expect(shareWords({ person: null, mine: true, litres: 5, minor: null, lines: [line] }, "GBP").verdict).toBe("5\u202fl");
  });
});

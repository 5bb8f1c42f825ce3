import { describe, expect, it } from "vitest";
import type { Approval, ApprovalsAnswer } from "../../api/shapes-orders";
import type { KeptAct } from "../../offline/kept-act";
import { approvalsView } from "./approvals-view";

const approval: Approval = {
  id: "a", about: "colour", title: "Colour to approve", question: "", waits: "glazing", waits_words: "before it is glazed", due_date: "2026-11-06",
  asked_at: "2026-10-29T17:20:00Z", asked_by: { id: "o", first_name: "Odile", initials: "OF" }, clay_words: "Bisqued ware keeps.", message: "Your order", answer: null,
};
const snapshot: ApprovalsAnswer = { at: "2026-10-31T09:00:00Z", journal_seq: 100, results: [approval] };

function kept(verb: string, fields: Record<string, string>, about: Record<string, string>, change: Partial<KeptAct> = {}): KeptAct {
  return {
    order: 1, id: `act-${verb}`, username: "odile", slug: "barn", path: "", body: { happened_at: "2026-10-31T09:05:00Z", ...fields }, verb, about,
    words: "", creates: [], photo: null, made_at: "2026-10-31T09:05:00Z", state: "waiting", tries: 0, waitUntil: 0, isWaitAsked: false, seq: null, problem: null, ...change,
  };
}

describe("what a client was asked", () => {
  it("shows what was written down on this phone before the studio has heard it", () => {
    const [row] = approvalsView(snapshot, [kept("answered_approval", { answer: "yes" }, { commission_id: "c", approval_id: "a" })], "c");

    expect(row?.answer?.answer).toBe("yes");
    expect(row?.clay_words).toBe("");
  });

  it("shows what was asked on this phone", () => {
    const act = kept("asked_approval", { about: "size", waits: "delivery", due_date: "2026-11-09", question: "" }, { commission_id: "c" });

    expect(approvalsView(snapshot, [act], "c").map(({ title }) => title)).toEqual(["Colour to approve", "Size to approve"]);
  });

  it("leaves acts of another order, and those already heard, alone", () => {
    const foreign = kept("answered_approval", { answer: "yes" }, { commission_id: "d", approval_id: "a" });
    const heard = kept("answered_approval", { answer: "yes" }, { commission_id: "c", approval_id: "a" }, { state: "heard", seq: 90 });

    expect(approvalsView(snapshot, [foreign, heard], "c")).toEqual([approval]);
  });
});

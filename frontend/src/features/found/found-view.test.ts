import { describe, expect, it } from "vitest";
import type { KeptAct } from "../../offline/kept-act";
import { foundRow, foundWhole } from "./found-sample";
import { foundListView, foundView } from "./found-view";

function kept(verb: string, about: Record<string, string>, change: Partial<KeptAct> = {}): KeptAct {
  return {
    order: 1, id: "a1", username: "nessa", slug: "barn", path: "", verb, about, words: verb, body: {}, creates: [], photo: null,
    made_at: "2026-10-31T09:00:00Z", state: "waiting", tries: 0, waitUntil: 0, isWaitAsked: false, seq: null, problem: null, ...change,
  };
}

describe("the list", () => {
  it("shows at once what was found here, until the studio has it", () => {
    const act = kept("found_ware", { what: "square tile", place_name: "Rack D3" });
    expect(foundListView([], 100, [act]).taken).toEqual([{ id: "a1", what: "square tile", place: "Rack D3", isKept: true }]);
    expect(foundListView([foundRow({ id: "a1" })], 100, [act]).taken).toHaveLength(0);
  });

  it("lays an end and a claim over their own row only", () => {
    const rows = [foundRow(), foundRow({ id: "f2" })];
    const view = foundListView(rows, 100, [kept("found_ended", { found_id: "f1", kind: "returned" }), kept("claimed", { found_id: "f2" }, { id: "a2" })]);
    expect(view.rows.map((row) => [row.state, row.claims_count])).toEqual([["returned", 0], ["open", 1]]);
  });
});

describe("one found thing", () => {
  it("remembers who was asked, here and elsewhere, and that it was claimed here", () => {
    const view = foundView(foundWhole({ asked: ["nessa"] }), 100, [kept("asked_owners", { found_id: "f1", member_ids: "bram jun" }), kept("claimed", { found_id: "f1" }, { id: "a2" })]);
    expect([...view.asked]).toEqual(["nessa", "bram", "jun"]);
    expect([view.isClaimedHere, view.found.claims_count]).toEqual([true, 1]);
  });

  it("lists what waits to be heard, in the words it was said in", () => {
    const acts = [kept("claimed", { found_id: "f1", said: "Yours, you said" }), kept("asked_owners", { found_id: "f1" }, { id: "a2", state: "heard", seq: 200 })];
    expect(foundView(foundWhole(), 100, acts).kept).toEqual([{ id: "a1", words: "Yours, you said" }]);
  });

  it("forgets it once the answer is newer", () => {
    expect(foundView(foundWhole(), 100, [kept("claimed", { found_id: "f1" }, { state: "heard", seq: 99 })]).isClaimedHere).toBe(false);
  });
});

// @vitest-environment happy-dom
import { describe, expect, it } from "vitest";
import { problemOf } from "../../api/problem";
import type { KeptAct } from "../../offline/kept-act";
import { actStore } from "../../offline/store";
import { drawn, until, withoutSignal } from "../common/test-phone";
import type { TestPhone } from "../common/test-phone";
import { NotTakenScreen } from "../studio/not-taken";
import { placingAct } from "./load-acts";

const NEXT = { id: "l2", number: "F-213", starts_at: "2026-11-09T18:00:00Z" };
const WARE = [{ id: "x1", mark: "L06" }, { id: "x2", mark: "T24" }];

function parked(ware: typeof WARE, problem: Record<string, unknown>): Omit<KeptAct, "order"> {
  const { path, fields, verb, about, words } = placingAct({ id: "l1", number: "F-211" }, ware, 100);
  return {
    id: "act-1", username: "jun", slug: "barn", path: `/api/v1/studios/barn/${path}`, body: { ...fields, id: "act-1", based_on: 100 }, verb, about, words, creates: [], photo: null,
    made_at: "2026-11-02T16:04:00Z", state: "parked", tries: 0, waitUntil: 0, isWaitAsked: false, seq: null, problem: problemOf(409, problem),
  };
}

async function notTaken(act: Omit<KeptAct, "order">): Promise<TestPhone> {
  return drawn(<NotTakenScreen />, {}, { prepare: (db) => actStore(db).add([act]) });
}

withoutSignal();
describe("ware that came too late", () => {
  const settled = { type: "/problems/load-settled", title: "That load is settled.", settled_at: "2026-11-02T16:00:00Z", settled_by: "Piet Arrowby", next_load: NEXT, ask: "technician" };

  it("says who settled it and when, and goes on the next load by one act", async () => {
    const phone = await notTaken(parked(WARE.slice(0, 1), settled));
    await until(() => { expect(phone.has("Not on F-211")).toBe(true); });
    expect(phone.has("Piet Arrowby")).toBe(true);

    phone.press("Put L06 on Mon 9 Nov instead");

    await until(() => { expect(phone.acts()).toMatchObject([{ verb: "put_on_load", state: "waiting", path: "/api/v1/studios/barn/loads/l2/placements/", body: { pieces: [{ piece_id: "x1" }] } }]); });
  });
});

describe("ware of which some does not go", () => {
  const refused = [{ id: "x2", mark: "T24", code: "damp-evidence-missing", detail: "T24: Nobody has felt it bone dry or weighed it." }];

  it("names each that does not and why, and puts on the others by the same act", async () => {
    const phone = await notTaken(parked(WARE, { type: "/problems/not-placed", title: "Nothing was put on the load.", refused, next_load: NEXT, ask: null }));
    await until(() => { expect(phone.has("Nobody has felt it bone dry")).toBe(true); });

    phone.press("Put L06 on");

    await until(() => { expect(phone.acts()).toMatchObject([{ id: "act-1", state: "waiting", body: { except_ids: ["x2"] } }]); });
  });
});

import { describe, expect, it } from "vitest";
import type { KeptAct } from "../../offline/kept-act";
import type { OrderDraft } from "./order-acts";
import { assign, close, handOver, match, part, promise } from "./order-acts";
import { orderAnswer, orderPiece, orderRow } from "./order-sample";
import { orderView } from "./order-view";
import { ordersView } from "./orders-view";

const UNITS = { length: "mm", mass: "g", temperature: "c" } as const;
let order = 0;

function kept(draft: OrderDraft, change: Partial<KeptAct> = {}): KeptAct {
  order += 1;
  return {
    order, id: `act${String(order)}`, username: "odile", slug: "barn", path: draft.path, verb: draft.verb, about: draft.about, words: draft.said,
    body: { ...draft.fields, happened_at: "2026-10-31T09:00:00Z" }, creates: [], photo: null, made_at: "2026-10-31T09:00:00Z", state: "waiting",
    tries: 0, waitUntil: 0, isWaitAsked: false, seq: null, problem: null, ...change,
  };
}

const jar = orderPiece("J06", "drying", { role: "jar" });
const lid = orderPiece("L06", "bone_dry", { role: "lid" });

function pairs(): ReturnType<typeof orderAnswer> {
  const answer = orderAnswer();
  const jars = answer.lines.map((line) => ({ ...line, id: "l2", what: "jars", pieces: [jar, lid] }));
  return { ...answer, lines: [...answer.lines, ...jars] };
}

describe("what was done here", () => {
  it("moves the promise at once, and leaves the counts to the studio", () => {
    const { answer, kept: told } = orderView(orderAnswer(), [kept(promise("c102", "2027-01-08", "Fri 8 Jan", "the kiln is out of use"))]);
    expect(answer.commission.promised_date).toBe("2027-01-08");
    expect(answer.lines[0]?.counts).toEqual(orderAnswer().lines[0]?.counts);
    expect(told).toMatchObject([{ words: "Promised for Fri 8 Jan", isKept: true }]);
  });

  it("stops showing once the answer has heard it", () => {
    const heard = kept(promise("c102", "2027-01-08", "Fri 8 Jan", ""), { state: "heard", seq: 99 });
    expect(orderView(orderAnswer(), [heard]).answer.commission.promised_date).toBe("2026-12-18");
  });

  it("is no business of another order", () => {
    expect(orderView(orderAnswer(), [kept(promise("c103", "2027-01-08", "Fri 8 Jan", ""))]).kept).toHaveLength(0);
  });

  it("stands a lid with its jar, on both of them, with the gap of the seat; and parts them again", () => {
    const together = orderView(pairs(), [kept(match("c102", [jar, lid], "0.4", UNITS))]).answer;
    const [shown, other] = together.lines[1]?.pieces ?? [];
    expect(shown?.partners).toEqual([{ id: "l06", mark: "L06", seat_gap_mm: 0.4 }]);
    expect(other?.partners).toEqual([{ id: "j06", mark: "J06", seat_gap_mm: 0.4 }]);

    expect(orderView(together, [kept(part("c102", jar, lid))]).answer.lines[1]?.pieces.every((piece) => piece.partners.length === 0)).toBe(true);
  });

  it("moves a piece to another line, or out of the order", () => {
    const over = orderView(pairs(), [kept(assign("c102", [{ id: "s03", mark: "S03" }], { id: "l2", what: "jars" }, ""))]).answer;
    expect(over.lines.map((line) => line.pieces.map((piece) => piece.mark).join())).toEqual(["S02,S04", "J06,L06,S03"]);
    const out = orderView(pairs(), [kept(assign("c102", [{ id: "s03", mark: "S03" }], null, ""))]).answer;
    expect(out.lines.flatMap((line) => line.pieces).map((piece) => piece.mark)).not.toContain("S03");
  });

  it("hands pieces over, and ends the order only when asked to", () => {
    const given = orderView(pairs(), [kept(handOver("c102", [jar], null))]).answer;
    expect([given.commission.state, given.lines[1]?.pieces[0]?.state]).toEqual(["open", "delivered"]);
    expect(orderView(pairs(), [kept(handOver("c102", [jar], true))]).answer.commission.state).toBe("closed");
  });
});

describe("a seat gap", () => {
  it("goes as a number in millimetres, as typed in inches, and not at all when nothing was measured", () => {
    expect(match("c102", [jar, lid], "0.4", UNITS).fields["seat_gap_mm"]).toBe(0.4);
    expect(match("c102", [jar, lid], "1/64", { ...UNITS, length: "in" }).fields["seat_gap_mm"]).toBe("1/64 in");
    expect(match("c102", [jar, lid], " ", UNITS).fields).not.toHaveProperty("seat_gap_mm");
  });
});

describe("the list", () => {
  const answer = { at: "", journal_seq: 100, at_risk: [orderRow({ id: "a" })], on_course: [orderRow()], closed: [orderRow({ id: "z", state: "closed" as const })] };

  it("moves a closed order to those closed, and one opened again back", () => {
    const view = ordersView(answer, [kept(close("c102", "closed", "")), kept(close("z", "reopened", ""))]);
    expect(view.closed.map((row) => row.id)).toEqual(["c102"]);
    expect(view.on_course.map((row) => row.id)).toEqual(["z"]);
  });

  it("shows an order taken on this phone until the studio has it", () => {
    const taken = kept({ path: "commissions/", fields: {}, verb: "took_commission", about: { client_name: "Larkspur Inn", what: "tiles", promised_date: "" }, said: "" }, { id: "new" });
    expect(ordersView(answer, [taken]).taken).toEqual([{ id: "new", client: "Larkspur Inn", what: "tiles", promised: null, isKept: true }]);
    expect(ordersView({ ...answer, on_course: [orderRow({ id: "new" })] }, [taken]).taken).toHaveLength(0);
  });
});

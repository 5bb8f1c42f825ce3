import { describe, expect, it } from "vitest";
import { problemOf } from "../../api/problem";
import type { KeptAct } from "../../offline/kept-act";
import { placingAct } from "./load-acts";
import { askingText, refusedLoad, wareOf, whomToAsk } from "./refused-load";

function parked(ware: { id: string; mark: string }[], problem: Record<string, unknown>): KeptAct {
  const { path, fields, verb, about, words } = placingAct({ id: "l1", number: "F-211" }, ware, 100);
  return {
    order: 1, id: "a", username: "jun", slug: "barn", path, body: fields, verb, about, words, creates: [], photo: null, made_at: "2026-11-02T16:04:00Z", state: "parked", tries: 0,
    waitUntil: 0, isWaitAsked: false, seq: null, problem: problemOf(409, problem),
  };
}

const L06 = { id: "x1", mark: "L06" };
const T23 = { id: "x2", mark: "T23" };
const NEXT = { id: "l2", number: "F-213", starts_at: "2026-11-09T18:00:00Z" };

describe("refusedLoad", () => {
  it("names the load, since when it is settled, and the next one", () => {
    const said = refusedLoad(parked([L06], { type: "/problems/load-settled", title: "That load is settled.", settled_at: "2026-11-02T16:00:00Z", next_load: NEXT, ask: "technician" }));

    expect(said).toMatchObject({ verdict: "Not on F-211", settledAt: "2026-11-02T16:00:00Z", nextLoad: NEXT, asks: "technician", others: [] });
  });

  it("names each piece that speaks against it, and those that could go without it", () => {
    const refused = [{ id: "x2", mark: "T23", code: "damp-evidence-missing", detail: "Nobody has felt it." }];
    const said = refusedLoad(parked([L06, T23], { type: "/problems/not-placed", title: "Nothing was put on the load.", refused, next_load: null }));

    expect(said?.refused).toEqual(refused);
    expect(said?.others).toEqual([L06]);
    expect(said?.nextLoad).toBeNull();
  });

  it("leaves every other act alone", () => {
    expect(refusedLoad({ ...parked([L06], { title: "No." }), verb: "moved" })).toBeNull();
  });
});

describe("askingText", () => {
  it("says what is wanted, why it was not taken and where it can be answered", () => {
    const act = parked([L06], { type: "/problems/load-settled", title: "That load is settled.", detail: "F-211 was settled at 16:00.", settled_by: "Piet Arrowby", next_load: NEXT });
    const said = refusedLoad(act);

    expect(said && whomToAsk(said)).toBe("Piet");
    expect(said && askingText(act, said, "https://barn.example")).toBe("Can L06 still go on F-211? Natch says: F-211 was settled at 16:00. Else I put it on F-213. https://barn.example/loads/l1");
  });

  it("asks a role where nobody settled it, and nobody where nobody can say otherwise", () => {
    const cutOff = refusedLoad(parked([L06], { title: "Too late.", ask: "technician", next_load: null }));
    const damp = refusedLoad(parked([L06], { title: "Damp.", next_load: null }));

    expect(cutOff && whomToAsk(cutOff)).toBe("a technician");
    expect(damp && whomToAsk(damp)).toBeNull();
  });
});

describe("wareOf", () => {
  it("keeps marks beside their pieces", () => {
    expect(wareOf(parked([L06, T23], { title: "No." }))).toEqual([L06, T23]);
  });
});

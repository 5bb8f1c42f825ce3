import { describe, expect, it } from "vitest";
import { changedFields, missingWords, wordsOfOrder } from "./order-change";
import { orderAnswer } from "./order-sample";

const before = wordsOfOrder({ ...orderAnswer().commission, client_contact: "at the inn" });

describe("an order written anew", () => {
  it("sends nothing that stayed as it was", () => {
    expect(changedFields(before, { ...before, client: ` ${before.client} ` })).toEqual({});
  });

  it("sends what differs under the names the studio reads", () => {
    const typed = { ...before, client: "Wainfleet", contact: "", what: "two boats", use: "display" as const, note: " rang on Monday " };

    expect(changedFields(before, typed)).toEqual({ client_name: "Wainfleet", client_contact: "", what: "two boats", use: "display", note: "rang on Monday" });
  });

  it("leaves alone how to reach the client where that was not told here", () => {
    const untold = wordsOfOrder(orderAnswer().commission);

    expect(untold.contact).toBeNull();
    expect(changedFields(untold, { ...untold, what: "boats" })).toEqual({ what: "boats" });
  });

  it("wants a client and what it is", () => {
    expect([...missingWords({ ...before, client: " ", what: "" }).keys()]).toEqual(["#/client_name", "#/what"]);
  });
});

// @vitest-environment happy-dom
import { describe, expect, it } from "vitest";
import { drawn, until, withoutSignal } from "../common/test-phone";
import { FoundScreen } from "./found";
import { foundRow } from "./found-sample";

withoutSignal();

describe("the list of what was found", () => {
  it("shows the newest photo of a thing small in its line, and nothing where there is none", async () => {
    const results = [foundRow({ photo_ids: ["p2", "p1"] }), foundRow({ id: "f2", what: "beaker" })];
    const phone = await drawn(<FoundScreen />, { "found/": { results, next: null, journal_seq: 7, at: "2026-10-31T09:00:00Z" } });

    await until(() => { expect(phone.has("Beaker")).toBe(true); });

    expect([...phone.root.querySelectorAll("img")].map((img) => img.getAttribute("src"))).toEqual(["/api/v1/studios/barn/photos/p2/thumbnail/"]);
    await until(() => { expect(document.title).toBe("Found · Natch"); });
  });
});

// @vitest-environment happy-dom
import { describe, expect, it } from "vitest";
import { drawn, withoutSignal } from "../common/test-phone";
import { HeldScreen, RefusedScreen } from "./hands";

const NESSA = { id: "m2", first_name: "Nessa", initials: "NO" };
const PATH = "/api/v1/studios/barn/pieces/0199e1aa-0000-7000-8000-000000000001/stage-events/";

withoutSignal();

describe("RefusedScreen", () => {
  it("says who tried what, on which phone, and what it takes", async () => {
    const row = { id: "r", member: NESSA, device: "shed phone", code: "not-permitted", needed: "scrap_own", method: "POST", path: PATH, tried_at: "2026-10-31T09:00:00Z" };

    const phone = await drawn(<RefusedScreen />, { "refused/": { results: [row], next: null } });

    expect(phone.has("Nessa, NO: stage events")).toBe(true);
    expect(phone.has("shed phone · takes: scrap own")).toBe(true);
  });
});

describe("HeldScreen", () => {
  it("asks an owner for a word on each act", async () => {
    const row = { id: "h", member: NESSA, device: "Nessa’s phone", why: "left", path: PATH, body: {}, happened_at: "2026-10-31T09:00:00Z", written_at: "2026-11-07T09:00:00Z" };

    const phone = await drawn(<HeldScreen />, { "held-acts/": { results: [row], next: null } });

    expect(phone.has("heard after leaving · Nessa’s phone")).toBe(true);
    expect([...phone.root.querySelectorAll("button")].map((one) => one.textContent)).toEqual(["Not taken", "Take it"]);
  });
});

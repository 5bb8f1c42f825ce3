// @vitest-environment happy-dom
import { describe, expect, it } from "vitest";
import { drawn, until, withoutSignal } from "../common/test-phone";
import type { TestPhone } from "../common/test-phone";
import { AirScreen } from "./air";

const ROOM = { id: "r1", name: "Drying room", kind: "room", parent_id: null, air_from_id: null, order: 0 };
const HOT = { id: "a1", taken_at: "2026-10-31T09:00:00Z", air_c: 61.2, humidity_fraction: null, use: "left_out", why: "61.2 °C: was it 61.2 °F, which is 16.2 °C?", did_you_mean_c: 16.2 };

async function air(reading: object): Promise<TestPhone> {
  return drawn(<AirScreen />, { "places/": { results: [ROOM], next: null }, "places/r1/readings/": { results: [reading], next: null } });
}

withoutSignal();
describe("a reading left out, as no room is so warm", () => {
  it("is told to be °F by one act", async () => {
    const phone = await air(HOT);
    await until(() => { expect(phone.has("was it 61.2 °F")).toBe(true); });
    expect(phone.has("As given")).toBe(false);

    phone.press("It was °F");

    await until(() => { expect(phone.acts()).toMatchObject([{ verb: "answered_reading", body: { answer: "fahrenheit" } }]); });
  });

  it("is not asked about again, once somebody answered", async () => {
    const phone = await air({ ...HOT, why: "Left out, as somebody answered.", did_you_mean_c: null });
    await until(() => { expect(phone.has("as somebody answered")).toBe(true); });

    expect(phone.has("It was °F")).toBe(false);
  });
});

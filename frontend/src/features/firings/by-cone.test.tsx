// @vitest-environment happy-dom
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { LoadWhole } from "../../api/shapes-firings";
import { drawn, until, withoutSignal } from "../common/test-phone";
import type { TestPhone } from "../common/test-phone";
import { fit, load } from "./firing-sample";
import { LoadScreen } from "./load";

// As the studio tells a bisque that lost its power at 868 degrees; the figures are made up.
const stopped: NonNullable<LoadWhole["stopped"]> = {
  facts: { highest_c: 868, highest_at: "2026-11-03T00:10:00Z", above_600_h: 3.5, gap_h: 1.5, last_c: 702, last_at: "2026-11-03T01:45:00Z" },
  caution: "Ware of a broken bisque may give crawled glaze.",
  choices: [
    { code: "resume", kind: "resumed", outcome: "", words: "Light it again from 702 °C.", is_backed: false },
    { code: "refire", kind: "ended", outcome: "not_fired", words: "Fire it again from cold.", is_backed: true },
    { code: "accept_by_cone", kind: "ended", outcome: "fired", words: "Nobody has read a cone 04: accept only what a cone has shown.", is_backed: false },
  ],
};

function lookedAt(more: Partial<LoadWhole> = {}): Promise<TestPhone> {
  const times = { ...load().times, started_at: "2026-11-02T18:00:00Z", stopped_at: "2026-11-03T00:10:00Z" };
  const shown = load({ state: "stopped", nexts: ["resumed", "ended"], times, stopped, ...more });
  return drawn(<LoadScreen id="l1" />, { "loads/l1/": { at: "", journal_seq: 100, load: shown }, "loads/l1/fit/": fit() });
}

/** Tap where the hand of a cone points. */
function point(phone: TestPhone, role: string, hand: string): void {
  const button = phone.root.querySelector<HTMLInputElement>(`input[name="${role}-hand"][value="${hand}"]`);
  if (button === null) throw new Error(`No hand ${hand} for the ${role} cone.`);
  button.click();
}

let clock_ms = 10_000;
withoutSignal();
beforeEach(() => {
  // Every look at the clock is past the dead time of the tray.
  vi.spyOn(performance, "now").mockImplementation(() => (clock_ms += 1_000));
  vi.stubGlobal("ResizeObserver", class { observe(): void { /* no size changes here */ } disconnect(): void { /* nothing to stop */ } });
});

describe("a firing that stopped", () => {
  it("shows what it reached and all it may become", async () => {
    const phone = await lookedAt();

    await until(() => { expect(phone.has("Fired, by its cones…")).toBe(true); });
    const said = phone.root.textContent.replaceAll(/\s/g, " ");
    for (const words of ["868 °C", "3½ h above 600 °C", "1½ h without power", "Nobody has read one", "Light it again", "Fire it anew, not fired"]) {
      expect(said).toContain(words);
    }
  });

  it("is taken as fired by the cones read there: they are kept first, then that it fired", async () => {
    const phone = await lookedAt();
    await until(() => { phone.press("Fired, by its cones…"); });
    await until(() => { point(phone, "firing", "6"); });
    await until(() => { expect(phone.has("Cone 04 is down on every shelf read.")).toBe(true); });

    phone.press("Fired, by its cones");

    await until(() => {
      expect(phone.acts()).toMatchObject([
        { verb: "cones_read", body: { cones: [{ level: null, role: "firing", cone: "04", clock_hand: 6 }] } },
        { verb: "load_told", body: { kind: "ended", outcome: "fired" } },
      ]);
    });
  });

  it("asks why where its cones do not speak for it, and keeps nothing till then", async () => {
    const phone = await lookedAt();
    await until(() => { phone.press("Fired, by its cones…"); });
    await until(() => { point(phone, "firing", "2"); });
    await until(() => { expect(phone.has("the ware is under-fired")).toBe(true); });
    phone.press("Not down yet");
    expect(phone.acts()).toEqual([]);

    phone.type("Or why it counts as fired all the same", "a test tile rang");
    await until(() => { phone.press("Fired all the same"); });

    await until(() => { expect(phone.acts().at(1)).toMatchObject({ body: { kind: "ended", outcome: "fired", reason: "a test tile rang" } }); });
  });

  it("goes by cones that were read before", async () => {
    const seen = { id: "c1", level: 1, role: "firing", cone: "04", clock_hand: 5, hand_words: "5 o'clock", words: "", happened_at: "2026-11-03T01:00:00Z" } as const;
    const phone = await lookedAt({ cones: [seen] });
    await until(() => { phone.press("Fired, by its cones…"); });
    await until(() => { expect(phone.has("Cone 04 is down on every shelf read.")).toBe(true); });

    phone.press("Fired, by its cones");

    await until(() => { expect(phone.acts()).toMatchObject([{ verb: "load_told", body: { kind: "ended", outcome: "fired" } }]); });
  });
});

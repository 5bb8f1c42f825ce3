// @vitest-environment happy-dom
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { CouldGoRow } from "../../api/shapes-firings";
import { drawn, until, withoutSignal } from "../common/test-phone";
import { fit, kiln, kilns, load, PIET } from "./firing-sample";
import { LoadScreen } from "./load";
import { ReadingScreen } from "./reading";

const couldGo = (mark: string, more: Partial<CouldGoRow> = {}): CouldGoRow => ({
  piece: { id: `x-${mark}`, mark, noun: "tile", design_name: "barley tile", stage: "drying", state: "bone_dry", state_words: "bone dry" }, maker: PIET, mine: false, place: null,
  due_date: null, commission: null, waiting_since: "2026-10-30T09:00:00Z", waits_days: 1, litres: 1, size: null, dry_evidence: { word: "check", ok: true, detail: "" },
  thickest_mm: null, warnings: [], reason: "Has waited 1 day.", is_put_first: false, ticket: null, fits: "fits", refused: null, ...more,
});
const damp = { code: "damp-evidence-missing", detail: "T24: Nobody has felt it bone dry or weighed it." };

function heard(more: Parameters<typeof load>[0] = {}): Record<string, unknown> {
  const rows = [couldGo("L06"), couldGo("T23"), couldGo("T24", { refused: damp })];
  return {
    "loads/l1/": { at: "", journal_seq: 100, load: load(more) },
    "loads/l1/fit/": fit(), "loads/l1/fit/?pieces=x-L06": fit(), "loads/l1/fit/?pieces=x-L06,x-T23": fit(),
    "loads/l1/could-go/": { at: "", journal_seq: 100, rule: "The longest first.", rows },
    "kilns/": kilns(kiln({ top_c: 1280 })), "programmes/": { results: [], next: null }, "members/": { results: [], next: null }, "places/": { results: [] },
  };
}

let clock_ms = 10_000;
withoutSignal();
beforeEach(() => {
  // Every look at the clock is past the dead time of the tray.
  vi.spyOn(performance, "now").mockImplementation(() => (clock_ms += 1_000));
  vi.stubGlobal("ResizeObserver", class { observe(): void { /* no size changes here */ } disconnect(): void { /* nothing to stop */ } });
});
describe("adding ware", () => {
  it("asks for what was tapped in one act, and shows it as asked, not as placed", async () => {
    const phone = await drawn(<LoadScreen id="l1" />, heard());
    await until(() => { expect(phone.has("Fits") || phone.has("Empty")).toBe(true); });

    phone.press("Add ware");
    await until(() => { phone.press("Not chosen: L06"); });
    await until(() => { phone.press("Not chosen: T23"); });
    await until(() => { phone.press("Put 2 on"); });

    await until(() => { expect(phone.acts()).toMatchObject([{ verb: "put_on_load", body: { based_on: 100, pieces: [{ piece_id: "x-L06" }, { piece_id: "x-T23" }] } }]); });
    await until(() => { expect(phone.has("whoever is heard first has the room")).toBe(true); });
  });

  it("lets nobody tick what is not shown to be dry, unless they may say why", async () => {
    const phone = await drawn(<LoadScreen id="l1" />, heard());
    await until(() => { phone.press("Add ware"); });
    await until(() => { expect(phone.has("Nobody has felt it bone dry")).toBe(true); });

    expect(() => { phone.press("Not chosen: T24"); }).toThrow(/No button/);
  });

  it("wants a reason of one who may override, and sends it", async () => {
    const may = { ...load().may, override: true };
    const phone = await drawn(<LoadScreen id="l1" />, { ...heard({ may }), "loads/l1/fit/?pieces=x-T24": fit() });
    await until(() => { phone.press("Add ware"); });
    await until(() => { phone.press("Not chosen: T24"); });

    await until(() => { phone.type("Why it goes", "weighed twice on paper"); });
    await until(() => { phone.press("Put 1 on"); });

    await until(() => { expect(phone.acts()).toMatchObject([{ body: { override_reason: "weighed twice on paper" } }]); });
  });
});

describe("opening a kiln", () => {
  const cooling = { state: "cooling", nexts: ["opened"], times: { ...load().times, started_at: "2026-10-30T17:30:00Z", ended_at: "2026-10-31T04:00:00Z" } } as const;

  it("asks for a measured temperature or a reason, and keeps nothing without", async () => {
    const phone = await drawn(<LoadScreen id="l1" />, heard({ ...cooling, nexts: ["opened"] }));
    await until(() => { phone.press("Open…"); });

    await until(() => { phone.press("Opened"); });

    await until(() => { expect(phone.has("Read it first")).toBe(true); });
    expect(phone.acts()).toEqual([]);
  });

  it("takes a temperature under the studio's limit, and goes on", async () => {
    const phone = await drawn(<LoadScreen id="l1" />, heard({ ...cooling, nexts: ["opened"] }));
    await until(() => { phone.press("Open…"); });
    await until(() => { phone.type("It reads", "240"); });
    await until(() => { phone.press("Opened"); expect(phone.has("This studio opens at")).toBe(true); });

    phone.type("It reads", "94");
    await until(() => { expect(phone.has("This studio opens at")).toBe(false); });
    phone.press("Opened");

    await until(() => { expect(phone.acts()).toMatchObject([{ verb: "load_told", body: { kind: "opened", celsius: 94 } }]); });
    await until(() => { expect(phone.has("Opened, to unload")).toBe(true); });
  });
});

describe("reading", () => {
  const firing = { state: "firing", nexts: ["ended", "stopped"], times: { ...load().times, started_at: "2026-10-31T07:30:00Z" } } as const;
  const tap = async (phone: Awaited<ReturnType<typeof drawn>>, keys: string): Promise<void> => {
    for (const key of keys) {
      const before = phone.root.querySelector("input")?.value ?? "";
      phone.press(key);
      await until(() => { expect(phone.root.querySelector("input")?.value).toBe(before + key); });
    }
  };

  it("is typed on the pad, kept, and stands among the last three", async () => {
    const phone = await drawn(<ReadingScreen id="l1" />, heard({ ...firing, nexts: ["ended"] }));
    await until(() => { expect(phone.has("No reading yet")).toBe(true); });

    await tap(phone, "642");
    phone.press("Save");

    await until(() => { expect(phone.acts()).toMatchObject([{ verb: "kiln_read", body: { reading_c: 642 } }]); });
    await until(() => { expect(phone.root.textContent).toMatch(/last.*642\u202f°C at/); });
  });

  it("is asked about before it is kept, where the figure is no kiln's", async () => {
    const phone = await drawn(<ReadingScreen id="l1" />, heard({ ...firing, nexts: ["ended"] }));
    await until(() => { expect(phone.has("No reading yet")).toBe(true); });

    await tap(phone, "2232");
    phone.press("Save");
    await until(() => { expect(phone.has("far over")).toBe(true); });
    expect(phone.acts()).toEqual([]);
    phone.press("It shows");

    // (2232 - 32) / 1.8 = 1222.2
    await until(() => { expect(phone.acts()).toMatchObject([{ body: { reading_c: 1222.2 } }]); });
  });
});

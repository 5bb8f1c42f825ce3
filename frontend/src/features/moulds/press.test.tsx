// @vitest-environment happy-dom
import { IDBKeyRange } from "fake-indexeddb";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { clock } from "../../domain/clock";
import { dropCaches } from "../../offline/cache";
import { keepLent, keyOf } from "../../offline/numbers";
import { drawn, fieldOf, until, withoutSignal } from "../common/test-phone";
import { lastPresses } from "./last-press";
import { PressScreen } from "./press";

const dryness = { word: "dry", basis: "weighed", free_water_fraction: 0.01, presses_since_dry: 0, presses_left: null };
const wear = { word: "unknown", pressings: 3, pressings_left: null, looks_again_at: null };
const part = (id: string) => ({ id, name: id, state: "whole", state_reason: "", presses: 3, presses_before: 0, presses_before_by: null });
const heard = {
  "mould-sets/s2/": {
    id: "s2", label: "M02", makes: { id: "dp", role: "tile", design_id: "d1", design_name: "barley tile" }, owner: null, place: null, inspect_at_presses: null,
    retire_at_presses: null, presses: 3, dryness, wear, next_booking: null, parts: [part("face"), part("back")],
    casting: { id: "c2", mould_set_id: "s2", master: { id: "ms", label: "MS-1", is_ready: true }, generation: 2, poured_at: null, is_in_use: true, capacity_fraction: 0.43, dry_g: null, now_g: null, weighed_at: null },
  },
  "mould-sets/s2/readiness/": {
    at: "2026-10-31T09:00:00Z", journal_seq: 7, set_id: "s2", casting_id: "c2", word: "dry", dryness, usable_at: null, dry_at: null, air: null, wear,
    expected_pressings_left: null, advice: { code: "press", reason: "Dry." }, cautions: [],
  },
  "designs/": { results: [{ id: "d1", name: "barley tile", noun: "tile", series: "T", parts: [] }], next: null },
  "slab-blocks/": { results: [{ id: "b16", label: "BK-16", laid_on: "2026-10-28", used_up_at: null, cautions: [], bodies: [], batches: [] }], next: null },
  "pieces/": { results: [], next: null, at: "2026-10-31T09:00:00Z", journal_seq: 7 },
};
const lent = (db: IDBDatabase): Promise<unknown> => keepLent(db, keyOf("barn", "d1", "T"), 28, 59);

let clock_ms = 10_000;
withoutSignal();
beforeEach(() => {
  clock_ms = 10_000;
  vi.spyOn(performance, "now").mockImplementation(() => clock_ms);
});

describe("a press without signal", () => {
  it("cuts the next number lent to this phone, from all mould parts and the newest block", async () => {
    const phone = await drawn(<PressScreen id="s2" />, heard, { prepare: lent });
    await until(() => { expect(document.title).toBe("Press, generation 2 · Natch"); });
    await until(() => { phone.press("Pressed T28"); });

    await until(() => { expect(phone.acts()).toHaveLength(1); });
    const body = phone.acts()[0]?.body;
    expect(body).toMatchObject({ casting_id: "c2", mould_part_ids: ["face", "back"], count: 1, slab_block_id: "b16", based_on: 7, parts: [{ role: "tile", piece: { mark: "T28", design_id: "d1" } }] });
    await until(() => { expect(phone.has("Pressed T29")).toBe(true); });
  });

  it("asks before it presses the same mould again within ten seconds", async () => {
    const phone = await drawn(<PressScreen id="s2" />, heard, { prepare: lent });
    await until(() => { phone.press("Pressed T28"); });
    await until(() => { expect(phone.acts()).toHaveLength(1); });
    clock_ms += 2_000;

    await until(() => { phone.press("Pressed T29"); });
    await until(() => { expect(phone.has("was pressed in M02 just now. Another?")).toBe(true); });
    phone.press("No, once");

    await until(() => { expect(phone.has("Another?")).toBe(false); });
    expect(phone.acts()).toHaveLength(1);
  });

  it("asks whether another twelve are meant, and sends them only then", async () => {
    const phone = await drawn(<PressScreen id="s2" />, heard, { prepare: lent });
    await until(() => { expect(phone.has("Pressed T28")).toBe(true); });
    for (let more = 1; more < 12; more += 1) await until(() => { phone.press("How many: one more"); });
    await until(() => { phone.press("Pressed 12 pieces"); });
    await until(() => { expect(phone.acts()).toHaveLength(1); });
    clock_ms += 20_000;
    const later = Date.now() + 20_000;
    vi.spyOn(Date, "now").mockImplementation(() => later);

    await until(() => { phone.press("Pressed 12 pieces"); });
    await until(() => { expect(phone.has("Another 12?")).toBe(true); });
    expect(phone.acts()).toHaveLength(1);

    // A tap in the dead time after the first press does nothing, and is tapped again.
    await until(() => {
      if (phone.acts().length === 1) phone.press("Another: 12 pieces");
      expect(phone.acts()).toHaveLength(2);
    });
  });

  it("takes a thumb that bounces for one press", async () => {
    const phone = await drawn(<PressScreen id="s2" />, heard, { prepare: lent });
    await until(() => { expect(phone.has("Pressed T28")).toBe(true); });

    phone.press("Pressed T28");
    phone.press("Pressed T28");

    await until(() => { expect(phone.has("Pressed T29")).toBe(true); });
    expect(phone.acts()).toHaveLength(1);
  });

  it("asks after the page was loaded anew what it would have asked before", async () => {
    const at = new Date(Date.now() - 20_000);
    const prepare = async (db: IDBDatabase): Promise<void> => {
      await lent(db);
      await lastPresses(db, "m1").remember("s2", { id: "p1", marks: "T27", count: 1, at });
    };
    const phone = await drawn(<PressScreen id="s2" />, heard, { prepare });

    await until(() => { phone.press("Pressed T28"); });

    await until(() => { expect(phone.has(`was pressed in M02 at ${clock(at, "Europe/London")}. Another?`)).toBe(true); });
    expect(phone.acts()).toHaveLength(0);
    vi.stubGlobal("IDBKeyRange", IDBKeyRange);
    await dropCaches(phone.db);
    expect(await lastPresses(phone.db, "m1").of("s2")).toBeNull();
  });

  it("wants the mark typed as it is cut where no number is left", async () => {
    const phone = await drawn(<PressScreen id="s2" />, heard);
    await until(() => { expect(fieldOf(phone.root, "No number is left")).toBeDefined(); });
    phone.type("No number is left", "T99");

    await until(() => { phone.press("Pressed T99"); });

    await until(() => { expect(phone.acts()[0]?.body).toMatchObject({ parts: [{ piece: { mark: "T99" } }] }); });
  });
});

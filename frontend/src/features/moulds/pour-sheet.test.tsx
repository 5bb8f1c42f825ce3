// @vitest-environment happy-dom
import { describe, expect, it } from "vitest";
import { MouldSheets } from "./mould-sheets";
import type { MouldNow } from "./use-mould";
import { useMouldScreen } from "./use-mould-screen";
import { drawn, until, withoutSignal } from "../common/test-phone";

const casting = { id: "c7", mould_set_id: "s7", master: { id: "ms", label: "MS-7", is_ready: true }, generation: 3, poured_at: null, is_in_use: true, capacity_fraction: 0.43, dry_g: null, now_g: null, weighed_at: null };
const part = { id: "face", name: "face", state: "chipped", state_reason: "", presses: 58, presses_before: 0, presses_before_by: null };
const mould = {
  set: { id: "s7", label: "M07", makes: { id: "dp", role: "knop", design_id: "d1", design_name: "pine-knop lid" }, owner: null, parts: [part], casting },
  readiness: { journal_seq: 7 },
} as unknown as MouldNow;

function CastAgain() {
  const screen = useMouldScreen(mould);
  return <><MouldSheets mould={mould} screen={screen} sheet="pour" /><p>{screen.saying.said?.words}</p></>;
}

const crumbs = {
  generation: 3,
  rows: ["L09", "L08"].map((mark, place) => ({
    pressing_id: `p${mark}`, pressed_at: `2026-10-2${String(2 - place)}T10:00:00Z`, count: 1,
    pieces: [{ id: mark, mark, noun: "lid", design_name: "pine-knop lid", stage: "drying", state: "drying", state_words: "drying" }],
  })),
};

withoutSignal();

describe("a mould cast again", () => {
  it("is poured from its master with the same parts, and says what to mind", async () => {
    const phone = await drawn(<CastAgain />, {});
    await until(() => { expect(phone.has("Its first presses may stick.")).toBe(true); });
    expect(phone.has("Look over what was pressed last")).toBe(true);

    phone.press("Poured anew from MS-7");

    await until(() => { expect(phone.acts()).toHaveLength(1); });
    expect(phone.acts()[0]?.path).toContain("mould-sets/s7/castings/");
    expect(phone.acts()[0]?.body).toMatchObject({ made_from: "master", master_id: "ms", parts: [{ name: "face" }] });
  });

  it("names the pieces of the last presses, which may hold crumbs", async () => {
    const phone = await drawn(<CastAgain />, { "mould-sets/s7/crumb-check/": crumbs });

    await until(() => { expect(phone.has("Look over 2 pieces from generation 3")).toBe(true); });

    const ways = [...phone.root.querySelectorAll<HTMLAnchorElement>("li a")].map((way) => [way.textContent, way.getAttribute("href")]);
    expect(ways).toEqual([["L09", "/pieces/L09"], ["L08", "/pieces/L08"]]);
  });

  it("keeps the length of a fired piece, and shows what the studio answers to it", async () => {
    const detail = "32.0 mm fired would come out 28.3 mm. Enlarge first: 36.2 mm model, as a new master.";
    const body = { type: "/problems/cast-from-fired-piece", title: "A mould taken from a fired piece is not the same mould.", status: 422, detail, errors: [] };
    const post = () => Promise.resolve({ status: 422, isOurs: true, retryAfter_s: null, body });
    const phone = await drawn(<CastAgain />, {}, { post });
    await until(() => { expect(phone.root.querySelectorAll("input[type=radio]")).toHaveLength(2); });
    phone.root.querySelectorAll<HTMLInputElement>("input[type=radio]")[1]?.click();
    await until(() => { phone.type("A length of it as fired", "32"); });

    await until(() => { phone.press("How large a model?"); });

    await until(() => { expect(phone.has(detail)).toBe(true); });
    expect(phone.acts()[0]?.body).toMatchObject({ made_from: "fired_piece", fired_mm: 32 });
    expect(phone.root.querySelector<HTMLInputElement>("input[name=fired_mm]")?.value).toBe("32");
  });
});

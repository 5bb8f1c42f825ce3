// @vitest-environment happy-dom
import { describe, expect, it } from "vitest";
import { drawn, until, withoutSignal } from "../common/test-phone";
import { pieceSample } from "../pieces/piece-sample";
import { FindScreen } from "./find";

const pieces = { results: [pieceSample({ id: "e01", mark: "É01" }).piece], next: null, at: "2026-10-31T09:00:00Z", journal_seq: 10 };

withoutSignal();

describe("Find", () => {
  it("finds pieces without a signal, and says that the rest could not be asked for", async () => {
    const phone = await drawn(<FindScreen />, { "pieces/": pieces });

    await until(() => { phone.type("A number", "e01"); });

    await until(() => { expect(phone.has("É01")).toBe(true); });
    await until(() => { expect(phone.has("only the pieces this phone has heard of")).toBe(true); });
  });

  it("shows what the studio answered, each kind with a way to it", async () => {
    const answer = { results: [{ kind: "order", id: "c7", name: "C-7", words: "Café Wyvern · tiles · open", is_exact: false }], is_cut: false };
    const phone = await drawn(<FindScreen />, { "pieces/": pieces, "search/?q=cafe": answer });

    await until(() => { phone.type("A number", "Café"); });

    await until(() => { expect(phone.root.querySelector('a[href="/orders/c7"]')?.getAttribute("aria-label")).toBe("C-7: Café Wyvern, tiles, open"); });
    expect(phone.has("No answer")).toBe(false);
  });

  it("says so when there is nothing by that name", async () => {
    const phone = await drawn(<FindScreen />, { "pieces/": pieces, "search/?q=zzz": { results: [], is_cut: false } });

    await until(() => { phone.type("A number", "zzz"); });

    await until(() => { expect(phone.has("Nothing by that name.")).toBe(true); });
  });
});

// @vitest-environment happy-dom
import { describe, expect, it } from "vitest";
import { drawn, until, withoutSignal } from "../common/test-phone";
import { ClashScreen } from "./clash";
import { pieceSample } from "./piece-sample";
import { ShelfScreen } from "./shelf";

const row = (mark: string) => pieceSample({ id: mark, mark, stage: "drying", state: "drying", state_words: "drying open", place: { id: "b1", name: "Rack B1" } }).piece;
const places = { results: [["room", "Drying room", null], ["b1", "Rack B1", "room"], ["b2", "Rack B2", "room"]].map(([id, name, parent_id]) => ({ id, name, parent_id, kind: "rack", air_from_id: null, order: 0 })), next: null };

withoutSignal();

describe("a shelf", () => {
  it("moves many by one act, names those left alone, and shows them gone at once", async () => {
    const phone = await drawn(<ShelfScreen id="b1" />, { "pieces/": { results: [row("J05"), row("J06"), row("L06")], next: null, at: "2026-10-31T09:00:00Z", journal_seq: 10 }, "places/": places });
    await until(() => { phone.press("Move…"); });
    await until(() => { phone.press("J06, with the others"); });
    await until(() => { expect([...phone.root.querySelectorAll("button")].find((one) => one.textContent === "Move 2")?.className).toContain("main"); });
    phone.press("Move 2");
    await until(() => { phone.press("Rack B2"); });

    await until(() => { expect(phone.acts()).toHaveLength(1); });
    expect(phone.acts()[0]).toMatchObject({ path: "/api/v1/studios/barn/bulk/", body: { kind: "move", ids: ["J05", "L06", "J06"], except_ids: ["J06"], place_id: "b2" } });
    await until(() => { expect(phone.has("Here: 1")).toBe(true); });
  });
});

describe("a clash", () => {
  const clash = {
    id: "c1", at: "2026-10-31T09:00:00Z", journal_seq: 10, kind: "ended_or_moved", state: "open", subject: { kind: "piece", id: "p1", mark: "T18", noun: "tile" },
    opened_at: "2026-10-31T08:15:00Z", stands_meanwhile: { stage: "bisque", state: "bisqued", words: "bisqued", place: null }, holds: ["placement"], asked: [],
    acts: ["Jun", "Bram"].map((first_name, place) => ({
      id: `a${String(place)}`, verb: "x", words: place === 0 ? "scrapped" : "glazed", detail: "", happened_at: "2026-10-30T16:50:00Z", written_at: "2026-10-30T17:40:00Z",
      member: { id: first_name, first_name, initials: "" }, device: "a phone", facts: {},
    })),
    choices: [{ choice: "first", consequence: "It is lost." }, { choice: "second", consequence: "It went on." }], may_answer: true,
  };

  it("gives no answer the look of the usual one, and sends the one chosen", async () => {
    const phone = await drawn(<ClashScreen id="c1" />, { "clashes/c1/": clash });
    await until(() => { expect(phone.has("Jun’s stands")).toBe(true); });
    const looks = ["Jun’s stands", "Bram’s stands"].map((words) => [...phone.root.querySelectorAll("button")].find((one) => one.textContent === words)?.className);
    expect(looks[0]).toBe(looks[1]);
    expect(looks[0]).not.toContain("main");

    phone.press("Bram’s stands");

    await until(() => { expect(phone.acts()[0]).toMatchObject({ path: "/api/v1/studios/barn/clashes/c1/answers/", body: { choice: "second" } }); });
    await until(() => { expect(phone.has("kept here until the studio hears it")).toBe(true); });
  });

  it("says whom to ask where this person may not answer", async () => {
    const phone = await drawn(<ClashScreen id="c1" />, { "clashes/c1/": { ...clash, may_answer: false, asked: [{ id: "m2", first_name: "Bram", initials: "BT" }] } });

    await until(() => { expect(phone.has("Ask Bram.")).toBe(true); });
    phone.press("Jun’s stands");
    expect(phone.acts()).toEqual([]);
  });
});

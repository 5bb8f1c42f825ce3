// @vitest-environment happy-dom
import { describe, expect, it } from "vitest";
import { THIN } from "../../domain/format";
import { drawn, fieldOf, until, withoutSignal } from "../common/test-phone";
import { PieceScreen } from "./piece";
import { partSample, pieceSample } from "./piece-sample";

const drying = (change: Parameters<typeof pieceSample>[0] = {}) => pieceSample({ mark: "J06", noun: "jar", stage: "drying", state: "drying", state_words: "drying open", cover: "open", ...change });

withoutSignal();

describe("the piece", () => {
  it("is weighed in the hand without signal, and the act can be undone", async () => {
    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": drying() });
    await until(() => { phone.press("Weigh"); });

    await until(() => { phone.type("J06 on the scale", "783"); });
    await until(() => { phone.press("Keep"); });

    await until(() => { expect(phone.has(`Weighed 783${THIN}g`)).toBe(true); });
    expect(phone.acts()[0]).toMatchObject({ verb: "weighed", state: "waiting", path: "/api/v1/studios/barn/pieces/p1/weighings/", body: { mass_g: 783, based_on: 10 } });
    phone.press("Undo");
    await until(() => { expect(phone.acts()[1]).toMatchObject({ verb: "retracted", body: { corrects: phone.acts()[0]?.id } }); });
  });

  it("keeps what was typed in its field, with the studio's fault beside it", async () => {
    const fault = { type: "/problems/invalid-request", title: "No.", status: 400, errors: [{ pointer: "#/mass_g", code: "wrong-dimension", detail: "783 mm is a length." }] };
    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": drying() }, { post: () => Promise.resolve({ status: 400, isOurs: true, body: fault, retryAfter_s: null }) });
    await until(() => { phone.press("Weigh"); });
    await until(() => { phone.type("J06 on the scale", "783 mm"); });
    await until(() => { phone.press("Keep"); });

    await until(() => { expect(phone.has("783 mm is a length.")).toBe(true); });
    expect(fieldOf(phone.root, "J06 on the scale").value).toBe("783 mm");
    expect(fieldOf(phone.root, "J06 on the scale").getAttribute("aria-invalid")).toBe("true");
  });

  it("asks for a cause before it is scrapped, and sends it with the part", async () => {
    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": drying() });
    await until(() => { phone.press("Something else"); });
    await until(() => { phone.press("Scrap, missing"); });
    await until(() => { phone.press("J06: scrapped"); });
    expect(phone.acts()).toEqual([]);

    phone.type("or in your own words", "foot cracked");
    await until(() => { expect(phone.has("Say why first")).toBe(false); });
    phone.press("J06: scrapped");
    await until(() => { expect(phone.acts()).toHaveLength(1); });

    expect(phone.acts()[0]?.body).toMatchObject({ stage: "lost", state: "scrapped", cause: "foot cracked", cause_is_guess: false });
  });

  it("leads to the order that it is for", async () => {
    const order = { commission_id: "c1", number: "C-103", line_id: "l1", what: "jar with its lid", promised_date: "2026-12-29" };

    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": pieceSample({}, { order }) });

    await until(() => { expect(phone.root.querySelector("a[href='/orders/c1']")?.textContent).toBe("C-103, jar with its lid"); });
  });

  it("leads to the lid that it was matched with", async () => {
    const { piece } = pieceSample({ id: "p2", mark: "L06", noun: "lid", state_words: "bone dry" });

    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": pieceSample({ noun: "jar" }, { partners: [{ ...piece, seat_gap_mm: null }] }) });

    await until(() => { expect(phone.root.querySelector("a[href='/pieces/p2']")?.textContent).toBe("L06, stands with it"); });
    expect(phone.has("jar, lid L06 is bone dry")).toBe(true);
  });

  it("is covered and not joined while its handle is still to be pressed", async () => {
    const parts = [partSample({ state: "out" })];

    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": pieceSample({ stage: "assembly", state: "out", state_words: "out", missing_roles: ["handle"] }, { parts }) });

    await until(() => { phone.press("Cover"); });
    expect(() => { phone.press("Joined"); }).toThrow(/No button/);
  });

  it("is joined once a second part is out", async () => {
    const parts = [partSample({ state: "out" }), partSample({ id: "part2", role: "handle", state: "out" })];

    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": pieceSample({ stage: "assembly", state: "out", state_words: "out" }, { parts }) });
    await until(() => { phone.press("S04: Joined"); });

    await until(() => { expect(phone.acts()).toMatchObject([{ body: { stage: "assembly", state: "joined" } }]); });
  });

  it("says how many letters of a cause are too many before it is sent", async () => {
    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": drying() });
    await until(() => { phone.press("Something else"); });
    await until(() => { phone.press("Scrap, missing"); });

    phone.type("or in your own words", "w".repeat(42));
    await until(() => { expect(phone.has("2 characters too many")).toBe(true); });
    phone.press("J06: scrapped");

    expect(phone.acts()).toEqual([]);
    expect(fieldOf(phone.root, "or in your own words").value).toHaveLength(42);
  });

  it("lets who is not its maker carry it and no more", async () => {
    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": drying({ mine: false, maker: { id: "m9", first_name: "Bram", initials: "BT" } }) });

    await until(() => { expect(phone.has("Bram’s piece")).toBe(true); });
    expect(phone.root.querySelector("section[aria-label^='What to do']")?.textContent).not.toContain("Weigh");
  });

  it("puts the cover that is due first in the hand, and covers the part it names and no more", async () => {
    const never = { p10: null, p50: null, p90: null, p_never: 1 };
    const step = { at: "2026-10-31T09:00:00Z", cover: "loose", part_ids: ["part-handle"], words: "cover the handle loosely" };
    const answer = {
      at: "2026-10-31T09:00:00Z", journal_seq: 10, computed_at: null, verdict: "Drying", sentence: "", curve: null,
      windows: { demould: { opens: null, closes: null }, join: { opens: null, closes: null }, shrinkage_ended: never, bisque: never },
      covering: { cracking: { now: "watch", peak: "watch", reason: "The handle, 9 mm, dries ahead of the body.", note: "" }, steps: [step], meeting: null, thin: null },
      weighed: null, unreachable: [], evidence: [], inputs: {}, assumed: [], sources: [], confidence: { basis: "guess", checks: 0 },
    };
    const parts = [partSample({ id: "part-body", state: "joined" }), partSample({ id: "part-handle", role: "handle", state: "joined" })];
    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": { ...drying(), parts }, "pieces/p1/drying/": answer });

    await until(() => { phone.press("Cover the handle loosely"); });

    await until(() => { expect(phone.acts()[0]).toMatchObject({ verb: "covered", body: { state: "loose", part_ids: ["part-handle"] } }); });
    await until(() => { expect(phone.has("Joined, loose")).toBe(true); });
    expect(phone.root.querySelector("section[aria-label^='What to do']")?.textContent).not.toContain("Cover the handle loosely");
  });

  it("gives an answer and no day where the room does not get it dry", async () => {
    const never = { p10: null, p50: null, p90: null, p_never: 1 };
    const answer = {
      at: "2026-10-31T09:00:00Z", journal_seq: 10, computed_at: null, verdict: "Not in this room", sentence: "In this room’s air it will not come dry enough to fire.",
      curve: null, windows: { demould: { opens: null, closes: null }, join: { opens: null, closes: null }, shrinkage_ended: never, bisque: never },
      covering: { cracking: null, steps: [], meeting: null, thin: null }, weighed: null,
      unreachable: ["bisque"], evidence: [], inputs: {}, assumed: [], sources: [], confidence: { basis: "guess", checks: 0 },
    };
    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": drying(), "pieces/p1/drying/": answer });

    await until(() => { expect(phone.has("A warm cupboard or a long warm hold gets it there.")).toBe(true); });
    expect(phone.has("Likely by")).toBe(false);
  });
});

import { IDBFactory } from "fake-indexeddb";
import { beforeEach, describe, expect, it } from "vitest";
import type { Membership } from "../api/shapes";
import { act, bench, heard, keptBefore, says, states } from "./outbox-bench";
import type { Reply } from "./outbox-bench";
import type { NewAct } from "./outbox";
import { takesPin } from "./shared";

const SHED = "shared:d1";
const by = (memberId: string, words: string, pin?: string, more: Partial<NewAct> = {}) => act(words, { username: SHED, memberId, ...(pin ? { pin } : {}), ...more });
const held: Reply = () => ({ status: 202, body: { held: true, why: "signed_off", journal_seq: null } });

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

describe("a shared phone's acts", () => {
  it("are sent each under the name of who did it, in the order done", async () => {
    const one = await bench();
    const sent: unknown[] = [];
    one.reply.with = (each) => { sent.push([each.words, each.memberId]); return heard(each); };
    await keptBefore(one, by("nessa", "a"), by("piet", "b"), by("nessa", "c"));

    await one.outbox.signIn(SHED);

    expect(sent).toEqual([["a", "nessa"], ["b", "piet"], ["c", "nessa"]]);
  });

  it.each([["heard", heard], ["parked", says(403, "pin-wrong")], ["held", held]] as const)("lose their PIN once they are %s", async (state, reply) => {
    const one = await bench();
    one.reply.with = () => null;
    await keptBefore(one, by("piet", "lit", "4711"));
    await one.outbox.signIn(SHED);
    expect(one.outbox.state().acts).toMatchObject([{ state: "waiting", pin: "4711" }]);

    one.reply.with = reply;
    await one.outbox.wake();

    expect(one.outbox.state().acts).toMatchObject([{ state, pin: null }]);
  });

  it("go again with the PIN that was asked for", async () => {
    const one = await bench();
    one.reply.with = (each) => (each.pin === "4711" ? heard(each) : says(403, "pin-needed")(each));
    await keptBefore(one, by("piet", "lit"));
    await one.outbox.signIn(SHED);
    const [parked] = one.outbox.state().acts;

    await one.outbox.askAgain(parked?.id ?? "", {}, "4711");

    expect(states(one)).toEqual({ lit: "heard" });
  });
});

describe.each([
  [401, "device-signed-off", "signed_off"],
  [403, "device-revoked", "signed_off"],
  [403, "device-locked", "locked"],
])("%s %s", (status, type, halt) => {
  it("stops and keeps everything", async () => {
    const one = await bench();
    one.reply.with = says(status, type);
    await keptBefore(one, by("piet", "a"), by("nessa", "b"));

    await one.outbox.signIn(SHED);

    expect(one.sent).toEqual(["a"]);
    expect(one.outbox.state().halt).toBe(halt);
    expect(states(one)).toEqual({ a: "waiting", b: "waiting" });
  });
});

describe("202", () => {
  it("says that the act is kept for the owner, and goes on", async () => {
    const one = await bench();
    one.reply.with = (each) => (each.words === "late" ? held(each) : heard(each));
    await keptBefore(one, by("piet", "late"), by("piet", "rest"));

    await one.outbox.signIn(SHED);

    expect(states(one)).toEqual({ late: "held", rest: "heard" });
  });
});

describe("a photo on a phone that was signed off", () => {
  it("stays on it, and what stands behind it goes to the owner without it", async () => {
    const one = await bench();
    one.reply.with = (each) => (each.photo ? says(403, "photo-not-held")(each) : held(each));
    await one.outbox.keep(by("piet", "cracked", undefined, { fields: { photo_ids: ["p1"] } }), [by("piet", "photo", undefined, { id: "p1", photo: new Blob(["a picture"]) })]);
    await keptBefore(one, by("nessa", "moved"));

    await one.outbox.signIn(SHED);

    expect(states(one)).toEqual({ photo: "parked", cracked: "held", moved: "held" });
    expect(one.outbox.state().acts.map((each) => each.photo?.size ?? null)).toEqual([9, null, null]);
    expect(one.outbox.state().acts[1]?.body["photo_ids"]).toEqual([]);
  });
});

describe("takesPin", () => {
  const piet = (has_pin: boolean, grants: string[]): Membership => ({ member: { has_pin, grants } }) as unknown as Membership;

  it("is for kiln work of who has kilns and a PIN", () => {
    expect(takesPin("loads/1/events/", piet(true, ["record_firings"]))).toBe(true);
    expect(takesPin("parts/1/events/", piet(true, ["record_firings"]))).toBe(false);
    expect(takesPin("loads/1/placements/", piet(true, ["put_on_load"]))).toBe(false);
    expect(takesPin("loads/1/events/", piet(false, ["record_firings"]))).toBe(false);
  });
});

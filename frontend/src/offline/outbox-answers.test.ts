import { IDBFactory } from "fake-indexeddb";
import { beforeEach, describe, expect, it } from "vitest";
import { act, bench, heard, keptBefore, says, states } from "./outbox-bench";
import type { Bench, Reply } from "./outbox-bench";
import type { NewAct } from "./outbox";

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

describe("2xx", () => {
  it("keeps the answer's journal number until a snapshot shows it", async () => {
    const one = await bench();
    await keptBefore(one, act("a"));
    await one.outbox.signIn("nell");

    expect(one.outbox.state().acts).toMatchObject([{ state: "heard", seq: 7 }]);
    await one.outbox.forgetHeard("barn", 6, new Date(0));
    expect(states(one)).toEqual({ a: "heard" });
    await one.outbox.forgetHeard("barn", 7, new Date(0));
    expect(states(one)).toEqual({});
  });

  it("is forgotten when it is older than any snapshot, but never while it waits", async () => {
    const one = await bench();
    one.reply.with = (sent) => (sent.words === "a" ? heard(sent) : null);
    await keptBefore(one, act("a"), act("b"));
    await one.outbox.signIn("nell");

    await one.outbox.forgetHeard("barn", 0, new Date(one.clock.now + 1));

    expect(states(one)).toEqual({ b: "waiting" });
  });

  it("takes a replayed answer like a first one", async () => {
    const one = await bench();
    one.reply.with = () => ({ status: 200, body: { journal_seq: 5 } });
    await keptBefore(one, act("a"));

    await one.outbox.signIn("nell");

    expect(states(one)).toEqual({ a: "heard" });
  });
});

describe.each([400, 404, 409, 410, 412, 422])("%s", (status) => {
  it("parks the act and those naming what it made, and goes on with the rest", async () => {
    const one = await bench();
    one.reply.with = (sent) => (sent.words === "press" ? says(status)(sent) : heard(sent));
    await keptBefore(
      one,
      act("press", { creates: ["part-9"] }),
      act("out of it", { path: "/api/v1/studios/barn/parts/part-9/events/", creates: ["cover-1"] }),
      act("cover it", { fields: { id_of_cover: "cover-1" } }),
      act("rest"),
    );

    await one.outbox.signIn("nell");

    expect(one.sent).toEqual(["press", "rest"]);
    expect(states(one)).toEqual({ press: "parked", "out of it": "parked", "cover it": "parked", rest: "heard" });
    expect(one.outbox.state().halt).toBeNull();
  });
});

describe("a parked act", () => {
  async function parked(): Promise<Bench> {
    const one = await bench();
    one.reply.with = says(409, "stage-out-of-order");
    await keptBefore(one, act("a", { creates: ["x"] }), act("b", { fields: { of: "x" } }));
    await one.outbox.signIn("nell");
    return one;
  }

  it("keeps what was typed and what the studio said", async () => {
    const one = await parked();

    expect(one.outbox.state().acts[0]).toMatchObject({ body: { kind: "demoulded" }, problem: { type: "/problems/stage-out-of-order", status: 409 } });
  });

  it("goes with its dependents when it is let go", async () => {
    const one = await parked();

    await one.outbox.letGo(one.outbox.state().acts[0]?.id ?? "");

    expect(states(one)).toEqual({});
  });

  it("is asked again under its own id, with what was added, and its dependents after it", async () => {
    const one = await parked();
    one.reply.with = heard;
    const [before] = one.outbox.state().acts;

    await one.outbox.askAgain(before?.id ?? "", { reason: "catching_up" });

    expect(one.outbox.state().acts[0]).toMatchObject({ id: before?.id, state: "heard", body: { kind: "demoulded", reason: "catching_up" } });
    expect(one.sent).toEqual(["a", "a", "b"]);
  });
});

describe.each([
  [401, "not-signed-in"],
  [403, "csrf-failed"],
  [404, "device-unknown"],
])("%s %s", (status, type) => {
  it("stops, keeps all and asks to sign in", async () => {
    const one = await bench();
    one.reply.with = says(status, type);
    await keptBefore(one, act("a"), act("b"));

    await one.outbox.signIn("nell");

    expect(one.sent).toEqual(["a"]);
    expect(one.outbox.state().halt).toBe("sign_in");
    expect(states(one)).toEqual({ a: "waiting", b: "waiting" });
  });
});

describe("403 not permitted", () => {
  it("parks", async () => {
    const one = await bench();
    one.reply.with = says(403, "not-permitted");
    await keptBefore(one, act("a"));

    await one.outbox.signIn("nell");

    expect(states(one)).toEqual({ a: "parked" });
  });
});

const photo = (id: string): NewAct => act("photo", { id, path: "/api/v1/studios/barn/photos/", verb: "took_photo", photo: new Blob(["a picture"]) });

describe.each([
  ["413", says(413, "photo-too-large")],
  ["413 in a proxy's own words", () => ({ status: 413, isOurs: false })],
  ["422", says(422, "not-a-photo")],
])("a photo answered with %s", (_name, no: Reply) => {
  it("is parked, and the act that names it is told without it", async () => {
    const one = await bench();
    one.reply.with = (sent) => (sent.words === "photo" ? no(sent) : heard(sent));
    await one.outbox.keep(act("with photo", { fields: { photo_ids: ["p1", "p2"] } }), [photo("p1")]);

    await one.outbox.signIn("nell");

    expect(states(one)).toEqual({ photo: "parked", "with photo": "heard" });
    expect(one.outbox.state().acts[1]?.body["photo_ids"]).toEqual(["p2"]);
  });
});

describe("413 to an act without a photo", () => {
  it("parks it", async () => {
    const one = await bench();
    one.reply.with = says(413);
    await keptBefore(one, act("a"));

    await one.outbox.signIn("nell");

    expect(states(one)).toEqual({ a: "parked" });
  });
});

describe.each<[string, Reply]>([
  ["408", says(408)],
  ["425", says(425)],
  ["429", says(429)],
  ["500", says(500)],
  ["503", says(503)],
  ["no answer", () => null],
  ["a page that is not JSON", () => ({ status: 200, isOurs: false })],
  ["a 404 that is not the studio's", () => ({ status: 404, isOurs: false })],
])("%s", (_name, reply) => {
  it("stops, keeps all, and tries again later and longer", async () => {
    const one = await bench();
    one.reply.with = reply;
    await keptBefore(one, act("a"), act("b"));

    await one.outbox.signIn("nell");
    await one.outbox.wake();
    await one.outbox.wake();

    expect(one.sent).toEqual(["a", "a", "a"]);
    expect(one.waits).toEqual([1000, 2000, 4000]);
    expect(states(one)).toEqual({ a: "waiting", b: "waiting" });
    expect(one.outbox.state().halt).not.toBeNull();
  });
});

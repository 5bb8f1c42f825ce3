import { IDBFactory } from "fake-indexeddb";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { openDb } from "./db";
import { act, bench, heard, keptBefore, says, states } from "./outbox-bench";
import { actStore, LEASE_MS } from "./store";

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

describe("order", () => {
  it("sends in the order made, each once", async () => {
    const one = await bench();
    await keptBefore(one, act("a"), act("b"), act("c"));

    await one.outbox.signIn("nell");
    await one.outbox.wake();

    expect(one.sent).toEqual(["a", "b", "c"]);
  });

  it("holds what comes behind an act that must wait, in that studio only", async () => {
    const one = await bench();
    one.reply.with = (sent) => (sent.slug === "barn" ? null : heard(sent));
    await keptBefore(one, act("a"), act("b"), act("other", { slug: "mill" }));

    await one.outbox.signIn("nell");

    expect(one.sent).toEqual(["a", "other"]);
  });

  it("sends photos before the act that names them, and holds it while one has not gone", async () => {
    const one = await bench();
    one.reply.with = (sent) => (sent.words === "photo" ? null : heard(sent));
    await one.outbox.signIn("nell");
    await one.outbox.keep(act("with photo", { fields: { photo_ids: ["p1"] } }), [act("photo", { id: "p1", photo: new Blob(["a picture"]) })]);
    await one.outbox.wake();
    const held = states(one);

    one.reply.with = heard;
    await one.outbox.wake();

    expect(held).toEqual({ photo: "waiting", "with photo": "waiting" });
    expect(await one.outbox.state().acts[0]?.photo?.text()).toBe("a picture");
    expect(one.sent.slice(-2)).toEqual(["photo", "with photo"]);
    expect(states(one)).toEqual({ photo: "heard", "with photo": "heard" });
  });

  it("sends nobody's acts under another's name", async () => {
    const one = await bench();
    await keptBefore(one, act("a", { username: "jun" }), act("b"));

    await one.outbox.signIn("nell");

    expect(one.sent).toEqual(["b"]);
    expect(states(one)).toMatchObject({ a: "waiting" });
  });
});

describe("waiting", () => {
  it("grows to five minutes and no further", async () => {
    const one = await bench();
    one.reply.with = () => null;
    await keptBefore(one, act("a"));
    await one.outbox.signIn("nell");

    for (let round = 0; round < 12; round += 1) await one.outbox.wake();

    expect(Math.max(...one.waits)).toBe(300_000);
  });

  it("honours Retry-After, which no tap shortens", async () => {
    const one = await bench();
    one.reply.with = says(429, "too-many-requests", { retryAfter_s: 90 });
    await keptBefore(one, act("a"));

    await one.outbox.signIn("nell");
    await one.outbox.wake();
    expect(one.sent).toEqual(["a"]);

    one.clock.now += 90_000;
    one.reply.with = heard;
    await one.outbox.wake();
    expect(states(one)).toEqual({ a: "heard" });
  });

  it("does not send before its time when another act is kept", async () => {
    const one = await bench();
    one.reply.with = () => null;
    await keptBefore(one, act("a"));
    await one.outbox.signIn("nell");

    await one.outbox.keep(act("b"));
    await one.outbox.signIn("nell");

    expect(one.sent).toEqual(["a"]);
  });
});

describe("the lease", () => {
  it("lets one tab send, and the other when the first is gone", async () => {
    const first = await bench();
    const second = await bench(first.store);
    await first.store.lease("a tab that died", 1_000_000);
    await keptBefore(second, act("a"));

    await second.outbox.signIn("nell");
    expect(second.sent).toEqual([]);
    expect(second.waits).toEqual([LEASE_MS]);

    second.clock.now += LEASE_MS + 1;
    await second.outbox.wake();
    expect(second.sent).toEqual(["a"]);
  });

  it("is given back when the page closes", async () => {
    const one = await bench();
    const other = await bench(one.store);
    one.reply.with = () => new Promise(() => undefined);
    await keptBefore(one, act("a"));
    void one.outbox.signIn("nell");
    await vi.waitFor(() => { expect(one.sent).toEqual(["a"]); });

    await one.outbox.leave();
    await other.outbox.signIn("nell");

    expect(other.sent).toEqual(["a"]);
  });

  it("is given back when the queue is empty", async () => {
    const one = await bench();
    await keptBefore(one, act("a"));

    await one.outbox.signIn("nell");

    expect(await one.store.lease("another", one.clock.now)).toBe(true);
  });
});

describe("the phone's storage", () => {
  it("still holds the acts after the app was killed", async () => {
    const before = await bench();
    await keptBefore(before, act("a"), act("b"));

    const after = await bench(actStore(await openDb("test")));
    await after.outbox.signIn("nell");

    expect(after.sent).toEqual(["a", "b"]);
  });

  it("stamps the envelope at the tap", async () => {
    const one = await bench();
    await keptBefore(one, act("undo", { corrects: "0199e1" }));

    expect(one.outbox.state().acts[0]?.body).toMatchObject({
      kind: "demoulded", based_on: 3, corrects: "0199e1", happened_at: new Date(1_000_000).toISOString(),
    });
  });
});

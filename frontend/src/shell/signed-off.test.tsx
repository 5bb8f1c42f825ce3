// @vitest-environment happy-dom
import { render } from "preact";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { until, withoutSignal } from "../features/common/test-phone";
import { act, bench, says } from "../offline/outbox-bench";
import type { Bench, Reply } from "../offline/outbox-bench";
import { SignedOff } from "./signed-off";

withoutSignal();
beforeEach(() => {
  // A picture out of the database in memory is not one that this browser's imitation knows.
  vi.spyOn(URL, "createObjectURL").mockReturnValue("blob:kept");
  vi.spyOn(URL, "revokeObjectURL").mockReturnValue(undefined);
});

const held: Reply = () => ({ status: 202, body: { held: true, why: "signed_off", journal_seq: null } });

async function drawnAfter(reply: Reply, ...acts: Parameters<Bench["outbox"]["keep"]>[0][]): Promise<HTMLElement> {
  const one = await bench();
  one.reply.with = reply;
  for (const each of acts) await one.outbox.keep(each);
  await one.outbox.signIn("nell");
  const root = document.body.appendChild(document.createElement("div"));
  render(<SignedOff name="shed phone" outbox={one.outbox} signIn={() => undefined} />, root);
  return root;
}

describe("SignedOff", () => {
  it("says which photo stays, and lets it be saved, while what it was taken for went", async () => {
    const reply: Reply = (each) => (each.photo ? says(403, "photo-not-held")(each) : held(each));

    const root = await drawnAfter(reply, act("L06: cracked (photo)", { photo: new Blob(["a picture"]) }), act("L06: cracked"));

    await until(() => { expect(root.textContent).toContain("1 photo stays on this phone"); });
    expect(root.textContent).toContain("1 act from before went to the studio");
    const save = root.querySelector("a[download]");
    expect(save?.getAttribute("aria-label")).toBe("Save L06: cracked (photo)");
    expect(save?.getAttribute("href")).toBe("blob:kept");
  });

  it("names what happened too late to be taken from here", async () => {
    const root = await drawnAfter(says(403, "device-revoked"), act("L06: demoulded"), act("K02: moved to Rack B1"));

    expect(root.textContent).toContain("2 acts not sent stay kept on this phone");
    expect([...root.querySelectorAll("li")].map((row) => row.textContent)).toEqual(["L06: demoulded", "K02: moved to Rack B1"]);
  });
});

// @vitest-environment happy-dom
import { QueryClient, QueryClientProvider } from "@tanstack/preact-query";
import { render } from "preact";
import { LocationProvider } from "preact-iso";
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { Me, Membership } from "../../api/shapes";
import { openDb } from "../../offline/db";
import { createOutbox } from "../../offline/outbox";
import { actStore } from "../../offline/store";
import { SessionContext } from "../common/session";
import { drawn as onPhone, OF_ONES_OWN, withoutSignal } from "../common/test-phone";
import { BenchScreen } from "./bench";
import { benchAnswer, hours, kept } from "./bench-sample";

const membership: Membership = {
  studio: { id: "s", slug: "barn", name: "Barn", zone: "Europe/London" },
  member: {
    id: "nell", first_name: "Nell", initials: "NQ", roles: ["maker"], grants: [], units: { length: "mm", mass: "g", temperature: "c" },
    left_handed: false, theme: "phone", text: 100, email: "", full_name: "Nell Quill", has_pin: false, quiet_from: null, quiet_until: null, wants_email: false,
  },
};
const me: Me = { username: "nell", memberships: [membership] };
/** Until it is so, or five seconds have gone: the machine may be busy. */
const until = (check: () => void): Promise<void> => vi.waitFor(check, 5_000);

/** The dead time reads this clock; a slow machine cannot make a test late. */
let clock_ms = 0;
async function drawn(): Promise<{ root: HTMLElement; bodies: () => Record<string, unknown>[] }> {
  const db = await openDb();
  const outbox = createOutbox({
    store: actStore(db), post: () => Promise.resolve(null), now: () => Date.now(), random: () => 1, later: () => undefined, tell: () => undefined,
  });
  const reading = new QueryClient({ defaultOptions: { queries: { staleTime: Infinity, retry: false } } });
  reading.setQueryData(["barn", "bench/"], benchAnswer());
  const root = document.body.appendChild(document.createElement("div"));
  const session = {
    phone: { db, outbox, tellHolder: () => undefined }, me, membership, deviceId: "d", places: [{ word: "Bench", href: "/bench" }], isSignedOut: false,
    enter: () => Promise.resolve(), signOut: () => Promise.resolve(), renew: () => undefined, ...OF_ONES_OWN,
  };
  render(
    <LocationProvider>
      <SessionContext.Provider value={session}>
        <QueryClientProvider client={reading}><BenchScreen /></QueryClientProvider>
      </SessionContext.Provider>
    </LocationProvider>,
    root,
  );
  await until(() => { expect(tray(root)).not.toBe(""); });
  return { root, bodies: () => outbox.state().acts.map((act) => ({ verb: act.verb, ...act.body })) };
}

function button(root: HTMLElement, name: string): HTMLButtonElement {
  const found = root.querySelector<HTMLButtonElement>(`button[aria-label^="${name}"]`);
  if (!found) throw new Error(`No button ${name} among: ${[...root.querySelectorAll("button")].map((one) => one.getAttribute("aria-label") ?? one.textContent).join(" | ")}`);
  return found;
}

const tray = (root: HTMLElement): string => root.querySelector("section[aria-label^='What to do']")?.getAttribute("aria-label") ?? "";

withoutSignal();
beforeEach(() => {
  clock_ms = 10_000;
  vi.spyOn(performance, "now").mockImplementation(() => clock_ms);
  Element.prototype.scrollIntoView = () => undefined;
});

describe("the tray", () => {
  it("serves the first row, and after an answer the next", async () => {
    const { root, bodies } = await drawn();
    expect(tray(root)).toBe("What to do with T26");

    button(root, "T26 out").click();

    await until(() => { expect(tray(root)).toBe("What to do with J08"); });
    await until(() => { expect(bodies()).toMatchObject([{ verb: "demoulded", kind: "demoulded", based_on: 100 }]); });
  });

  it("takes nothing for 600 ms, so that a bounce cannot answer for the next piece", async () => {
    const { root, bodies } = await drawn();
    button(root, "T26 out").click();
    await until(() => { expect(tray(root)).toBe("What to do with J08"); });

    clock_ms += 599;
    button(root, "J08 out").click();
    clock_ms += 1;
    button(root, "J08 not yet").click();

    await until(() => { expect(bodies()).toMatchObject([{ verb: "demoulded" }, { verb: "not_yet" }]); });
    expect(tray(root)).toBe("What to do with L08");
  });

  it("asks what holds a stuck piece, and keeps the answer", async () => {
    const { root, bodies } = await drawn();

    button(root, "T26 stuck").click();
    await until(() => { button(root, "T26 stuck: Wet mould").click(); });

    await until(() => { expect(bodies()).toMatchObject([{ kind: "stuck", stuck_how: "wet_mould" }]); });
  });
});

describe("an answered row", () => {
  it("says when, that it is kept here, and can be undone by a second act", async () => {
    const { root, bodies } = await drawn();
    button(root, "T26 out").click();
    await until(() => { expect(root.querySelector("ul")?.textContent).toMatch(/Out \d\d:\d\dkept here · M02 free/); });

    button(root, "Undo: T26").click();

    await until(() => { expect(bodies()).toHaveLength(2); });
    const [out, undo] = bodies();
    expect(undo).toMatchObject({ verb: "retracted", corrects: out?.["id"] });
    await until(() => { expect(tray(root)).toBe("What to do with T26"); });
  });
});

describe("a row answered a while ago", () => {
  it("leads to its piece, where what is out is joined", async () => {
    const out = kept("demoulded", { part_id: "part-T26", piece_id: "piece-T26" }, { username: "jun", made_at: hours(-1) });

    const phone = await onPhone(<BenchScreen />, { "bench/": benchAnswer() }, { prepare: (db) => actStore(db).add([out]) });

    await until(() => { expect(phone.root.querySelector("a[href='/pieces/piece-T26']")?.getAttribute("aria-label")).toContain("out"); });
    expect(phone.has("Undo")).toBe(false);
  });
});

describe("the line under the title", () => {
  it("counts what is kept, as a state and not a fault", async () => {
    const { root } = await drawn();
    button(root, "T26 out").click();

    await until(() => { expect(root.querySelector("p[role=status]")?.textContent).toContain("1 kept on this phone"); });
  });
});

// @vitest-environment happy-dom
import { QueryClient, QueryClientProvider } from "@tanstack/preact-query";
import type { JSX } from "preact";
import { render } from "preact";
import { LocationProvider } from "preact-iso";
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { Me, Membership } from "../../api/shapes";
import { openDb } from "../../offline/db";
import { createOutbox } from "../../offline/outbox";
import type { Outbox } from "../../offline/outbox";
import { actStore } from "../../offline/store";
import { SessionContext } from "../common/session";
import { OF_ONES_OWN, withoutSignal } from "../common/test-phone";
import { NewOrderScreen } from "./new-order";
import { OrderScreen } from "./order";
import { OrderStoryScreen } from "./order-story-screen";
import { livesAnswer, orderAnswer } from "./order-sample";

const membership: Membership = {
  studio: { id: "s", slug: "barn", name: "Barn", zone: "Europe/London" },
  member: {
    id: "odile", first_name: "Odile", initials: "OF", roles: ["owner", "maker"], grants: [], units: { length: "mm", mass: "g", temperature: "c" },
    left_handed: true, theme: "phone", text: 100, email: "", full_name: "Odile Farrant", has_pin: false, quiet_from: null, quiet_until: null, wants_email: false,
  },
};
const me: Me = { username: "odile", memberships: [membership] };
const sleep = (wait_ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, wait_ms));

interface Phone {
  root: HTMLElement;
  outbox: Outbox;
  reading: QueryClient;
  show: (screen: JSX.Element) => Promise<void>;
}

async function phone(): Promise<Phone> {
  const db = await openDb();
  const outbox = createOutbox({
    store: actStore(db), post: () => Promise.resolve({ status: 400, isOurs: true, retryAfter_s: null, body: refusal }), now: () => Date.now(), random: () => 1,
    later: () => undefined, tell: () => undefined,
  });
  const reading = new QueryClient({ defaultOptions: { queries: { staleTime: Infinity, gcTime: Infinity, retry: false } } });
  reading.setQueryData(["barn", "commissions/c102/"], orderAnswer());
  reading.setQueryData(["barn", "commissions/c102/lives/"], livesAnswer());
  reading.setQueryData(["barn", "commissions/"], { at: "", journal_seq: 100, at_risk: [], on_course: [], closed: [] });
  const root = document.body.appendChild(document.createElement("div"));
  const session = {
    phone: { db, outbox, tellHolder: () => undefined }, me, membership, deviceId: "d", places: [{ word: "Orders", href: "/orders" }], isSignedOut: false,
    enter: () => Promise.resolve(), renew: () => undefined, signOut: () => Promise.resolve(), ...OF_ONES_OWN,
  };
  const show = async (screen: JSX.Element): Promise<void> => {
    render(
      <LocationProvider>
        <SessionContext.Provider value={session}><QueryClientProvider client={reading}>{screen}</QueryClientProvider></SessionContext.Provider>
      </LocationProvider>,
      root,
    );
    await sleep(60);
  };
  return { root, outbox, reading, show };
}

const refusal = {
  type: "/problems/invalid", title: "Something in it cannot be read.", status: 400, detail: "",
  errors: [{ pointer: "#/client_name", code: "odd", detail: "A name on one line." }],
};

function act(root: HTMLElement, words: string): HTMLButtonElement {
  const found = [...root.querySelectorAll("button")].find((one) => one.textContent.startsWith(words));
  if (!found) throw new Error(`No act ${words} among: ${[...root.querySelectorAll("button")].map((one) => one.textContent).join(" | ")}`);
  return found;
}

function field(root: HTMLElement, name: string): HTMLInputElement {
  const found = root.querySelector<HTMLInputElement>(`input[name="${name}"]`);
  if (!found) throw new Error(`No field ${name}.`);
  return found;
}

async function type(root: HTMLElement, name: string, words: string): Promise<void> {
  const input = field(root, name);
  input.value = words;
  input.dispatchEvent(new Event("input", { bubbles: true }));
  await sleep(20);
}

withoutSignal();
beforeEach(() => {
  vi.stubGlobal("matchMedia", () => ({ matches: false, addEventListener: () => undefined, removeEventListener: () => undefined }));
});

describe("an order", () => {
  it("says how it stands in words, and has a table for its drawing", async () => {
    const { root, show } = await phone();
    await show(<OrderScreen id="c102" />);

    expect(root.textContent).toContain("1 bisqued, 3 on the way");
    expect(root.textContent).not.toMatch(/\d\s?%/);
    expect([...root.querySelectorAll("table tr")].map((row) => row.textContent).join(" ")).toContain("S02");
  });

  it("promises another day through the outbox, and shows it at once", async () => {
    const { root, outbox, show } = await phone();
    await show(<OrderScreen id="c102" />);

    act(root, "Change…").click();
    await sleep(20);
    act(root, "Promise another day").click();
    await sleep(20);
    await type(root, "promised_date", "2027-01-08");
    await type(root, "reason", "the client is away");
    act(root, "Promise Fri 8 Jan").click();

    await vi.waitFor(() => {
      expect(outbox.state().acts.map((one) => one.body)).toMatchObject([{ promised_date: "2027-01-08", reason: "the client is away", based_on: 100 }]);
      expect(root.textContent).toContain("Fri 8 Jan");
    });
  });

  it("is written anew at once, only where nobody else did meanwhile, and keeps what was typed when it was not taken", async () => {
    const { root, show } = await phone();
    const sent: { method: string; match: string | null; body: unknown }[] = [];
    const moved = { type: "/problems/precondition-failed", title: "It was changed meanwhile.", status: 412, detail: "Look at it again.", errors: [] };
    const answers = [new Response(JSON.stringify(moved), { status: 412, headers: { "Content-Type": "application/problem+json" } })];
    vi.stubGlobal("fetch", (_: string, call: RequestInit) => {
      if (call.method !== "PATCH") return Promise.reject(new TypeError("no signal in a test"));
      sent.push({ method: call.method, match: new Headers(call.headers).get("If-Match"), body: JSON.parse(String(call.body)) });
      return Promise.resolve(answers[0]);
    });
    await show(<OrderScreen id="c102" />);
    act(root, "Change…").click();
    await sleep(20);
    act(root, "Client, use, a note").click();
    await sleep(20);

    await type(root, "client_name", "Wainfleet");
    act(root, "Keep").click();

    await vi.waitFor(() => { expect(root.querySelector("[role=alert]")?.textContent).toBe("Look at it again."); });
    expect(sent).toMatchObject([{ method: "PATCH", match: '"1"', body: { client_name: "Wainfleet", based_on: 100 } }]);
    expect(field(root, "client_name").value).toBe("Wainfleet");
  });

  it("ends only by a second step that says why", async () => {
    const { root, outbox, show } = await phone();
    await show(<OrderScreen id="c102" />);
    act(root, "Change…").click();
    await sleep(20);
    act(root, "Close or cancel").click();
    await sleep(20);

    root.querySelector<HTMLInputElement>('input[value="cancelled"]')?.click();
    await sleep(20);
    expect(act(root, "Cancel C-102").disabled).toBe(true);

    await type(root, "reason", "no longer wanted");
    act(root, "Cancel C-102").click();
    await vi.waitFor(() => { expect(outbox.state().acts.map((one) => one.body["kind"])).toEqual(["cancelled"]); });
  });
});

describe("the story of an order", () => {
  it("can be had as a table, of what is shown", async () => {
    const { root, reading, show } = await phone();
    reading.setQueryData(["barn", "commissions/c102/history/?filter=all"], { results: [], next: null });
    reading.setQueryData(["barn", "commissions/c102/history/?filter=losses"], { results: [], next: null });
    const went: string[] = [];
    vi.spyOn(location, "assign").mockImplementation((to) => { went.push(String(to)); });
    await show(<OrderStoryScreen id="c102" />);

    root.querySelector<HTMLInputElement>('input[value="losses"]')?.click();
    await sleep(30);
    act(root, "As a table").click();

    expect(went).toEqual(["/api/v1/studios/barn/commissions/c102/history.csv?filter=losses"]);
    vi.restoreAllMocks();
  });
});

describe("a new order", () => {
  it("keeps what was typed when the screen is left", async () => {
    const { root, show } = await phone();
    await show(<NewOrderScreen />);
    await type(root, "client_name", "Larkspur Inn");

    await show(<p>elsewhere</p>);
    await show(<NewOrderScreen />);

    expect(field(root, "client_name").value).toBe("Larkspur Inn");
  });

  it("says beside each field what is missing, and keeps nothing until it is said", async () => {
    const { root, outbox, show } = await phone();
    await show(<NewOrderScreen />);

    act(root, "Take the order").click();
    await sleep(30);

    expect([...root.querySelectorAll("[role=alert]")].map((one) => one.textContent)).toHaveLength(3);
    expect(outbox.state().acts).toHaveLength(0);
  });

  it("stands in its form again when the studio did not take it, each fault beside its field", async () => {
    const { root, outbox, show } = await phone();
    await outbox.signIn("odile");
    await show(<NewOrderScreen />);
    await type(root, "client_name", "Larkspur Inn");
    await type(root, "what", "hearth tiles");
    root.querySelector<HTMLInputElement>('input[value="display"]')?.click();
    await sleep(20);
    act(root, "Take the order").click();
    await vi.waitFor(() => { expect(outbox.state().acts.map((one) => one.state)).toEqual(["parked"]); });

    await show(<p>elsewhere</p>);
    await show(<NewOrderScreen />);

    expect(field(root, "what").value).toBe("hearth tiles");
    expect(root.querySelector("[role=alert]")?.textContent).toBe("A name on one line.");
  });
});

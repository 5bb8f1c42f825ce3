/** For tests: one screen on a phone that has heard certain answers, with the studio's answers to acts made up. */
import { IDBFactory } from "fake-indexeddb";
import { QueryClient, QueryClientProvider } from "@tanstack/preact-query";
import { render } from "preact";
import type { ComponentChildren } from "preact";
import { LocationProvider } from "preact-iso";
import { afterEach, beforeEach, vi } from "vitest";
import type { Answer } from "../../api/answers";
import type { Me, Membership } from "../../api/shapes";
import { openDb } from "../../offline/db";
import type { KeptAct } from "../../offline/kept-act";
import { createOutbox } from "../../offline/outbox";
import { actStore } from "../../offline/store";
import { SessionContext } from "./session";

export const MEMBERSHIP: Membership = {
  studio: { id: "s", slug: "barn", name: "Barn", zone: "Europe/London" },
  member: {
    id: "m1", first_name: "Jun", initials: "JH", roles: ["maker"],
    grants: ["move_place", "add_photo", "report_damage", "press_own", "check_own", "cover_own", "advance_own", "scrap_own", "book_moulds"],
    units: { length: "mm", mass: "g", temperature: "c" }, left_handed: false, theme: "phone", text: 100, email: "", full_name: "Jun Haskett",
    has_pin: false, quiet_from: null, quiet_until: null, wants_email: false,
  },
};

/** What a session says of a phone that is nobody else's. */
export const OF_ONES_OWN = {
  shared: null, askPin: () => Promise.resolve(null), pinFor: () => Promise.resolve(null), share: () => Promise.resolve(),
};

export interface TestPhone {
  root: HTMLElement;
  db: IDBDatabase;
  acts: () => readonly KeptAct[];
  /** The button with these words, or this spoken name, in the order drawn. */
  press: (words: string) => void;
  type: (label: string, text: string) => void;
  has: (words: string) => boolean;
}

const roots: HTMLElement[] = [];

/** Take every screen off, so that none asks anything once its test is over. */
export function putAway(): void {
  for (const root of roots.splice(0)) render(null, root);
  document.body.replaceChildren();
}

/** Until it is so, or five seconds have gone: the machine may be busy. */
export const until = (check: () => void): Promise<void> => vi.waitFor(check, 5_000);

export async function drawn(
  screen: ComponentChildren,
  heard: Record<string, unknown>,
  { post = () => Promise.resolve(null), prepare }: { post?: (act: KeptAct) => Promise<Answer | null>; prepare?: (db: IDBDatabase) => Promise<unknown> } = {},
): Promise<TestPhone> {
  const me: Me = { username: "jun", memberships: [MEMBERSHIP] };
  const db = await openDb();
  await prepare?.(db);
  const outbox = createOutbox({ store: actStore(db), post, now: () => Date.now(), random: () => 1, later: () => undefined, tell: () => undefined });
  await outbox.signIn("jun");
  const reading = new QueryClient({ defaultOptions: { queries: { staleTime: Infinity, retry: false } } });
  for (const [path, answer] of Object.entries(heard)) reading.setQueryData(["barn", path], answer);
  const root = document.body.appendChild(document.createElement("div"));
  roots.push(root);
  const session = {
    phone: { db, outbox, tellHolder: () => undefined }, me, membership: MEMBERSHIP, deviceId: "d1", places: [], isSignedOut: false,
    enter: () => Promise.resolve(), signOut: () => Promise.resolve(), renew: () => undefined,
    ...OF_ONES_OWN,
  };
  render(
    <LocationProvider>
      <SessionContext.Provider value={session}>
        <QueryClientProvider client={reading}>{screen}</QueryClientProvider>
      </SessionContext.Provider>
    </LocationProvider>,
    root,
  );
  return {
    root,
    db,
    acts: () => outbox.state().acts,
    press: (words) => { buttonOf(root, words).click(); },
    type: (label, text) => {
      const input = fieldOf(root, label);
      input.value = text;
      input.dispatchEvent(new Event("input", { bubbles: true }));
    },
    has: (words) => root.textContent?.includes(words) ?? false,
  };
}

function buttonOf(root: HTMLElement, words: string): HTMLButtonElement {
  const all = [...root.querySelectorAll("button")];
  const found = all.find((one) => (one.getAttribute("aria-label") ?? one.textContent ?? "").startsWith(words) || one.textContent === words);
  if (!found) throw new Error(`No button ${words} among: ${all.map((one) => one.getAttribute("aria-label") ?? one.textContent).join(" | ")}`);
  return found;
}

/** As if the camera had given this. */
export function takePhoto(root: HTMLElement, picture: Blob): void {
  const input = root.querySelector<HTMLInputElement>("input[type=file]");
  if (!input) throw new Error("Nothing takes a photo.");
  Object.defineProperty(input, "files", { value: [picture], configurable: true });
  input.dispatchEvent(new Event("change", { bubbles: true }));
}

export function fieldOf(root: HTMLElement, label: string): HTMLInputElement {
  const found = [...root.querySelectorAll("label")].find((one) => one.textContent?.includes(label))?.querySelector("input");
  if (!found) throw new Error(`No field ${label}`);
  return found;
}

/** Each test of the file begins on an empty phone that reaches nothing, and leaves nothing behind. */
export function withoutSignal(): void {
  beforeEach(() => {
    globalThis.indexedDB = new IDBFactory();
    vi.stubGlobal("fetch", () => Promise.reject(new TypeError("no signal in a test")));
  });
  afterEach(() => {
    putAway();
    vi.unstubAllGlobals();
  });
}

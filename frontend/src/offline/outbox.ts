/** Writes wait here until the studio has heard them: kept first, sent in the order made, once, by one tab. */
import type { Answer } from "../api/answers";
import { uuid7 } from "./ids";
import { withDependents } from "./kept-act";
import type { JsonObject, KeptAct } from "./kept-act";
import { LEASE_MS, type ActStore } from "./store";
import { backoff_ms, judge } from "./verdicts";
import type { Verdict } from "./verdicts";

export type Halt = "no_signal" | "no_studio" | "sign_in" | "signed_off" | "locked" | "not_kept" | null;

export interface OutboxState {
  acts: readonly KeptAct[];
  isSending: boolean;
  halt: Halt;
}

export interface NewAct {
  slug: string;
  username: string;
  path: string;
  fields: JsonObject;
  basedOn: number;
  verb: string;
  about: Record<string, string>;
  words: string;
  creates?: string[];
  corrects?: string;
  happenedAt?: Date;
  photo?: Blob;
  /** From `uuid7`, when the screen must name the act before it is on the disk. */
  id?: string;
  /** On a shared phone: who holds it, and the PIN they typed. */
  memberId?: string;
  pin?: string | null;
}

export interface Outbox {
  state(): OutboxState;
  subscribe(listener: () => void): () => void;
  /**
   * Keep an act and set about sending it; resolves with its id when it is on the disk, rejects when it is not. Photos it
   * names are kept with it, all or none, and sent before it.
   */
  keep(act: NewAct, photos?: readonly NewAct[]): Promise<string>;
  /** Who may send now; null when nobody is signed in. Starts sending theirs. */
  signIn(username: string | null): Promise<void>;
  /** Try again now: signal came back, or a person asks. Never shortens a wait the server asked for. */
  wake(): Promise<void>;
  /** Ask again for a parked act, as it was typed but for what is added; those parked with it go along. */
  askAgain(id: string, added?: JsonObject, pin?: string): Promise<void>;
  /** Let a parked act go, and those parked with it that cannot stand without it. */
  letGo(id: string): Promise<void>;
  /** Forget heard acts that every snapshot now shows, and those older than any snapshot worth laying them over. */
  forgetHeard(slug: string, seq: number, madeBefore: Date): Promise<void>;
  /** Read what another tab changed. */
  reload(): Promise<void>;
  /** The page closes: let the next one send at once. What was on its way is sent again under its own id, which is harmless. */
  leave(): Promise<void>;
}

export interface Surroundings {
  store: ActStore;
  post: (act: KeptAct) => Promise<Answer | null>;
  now: () => number;
  random: () => number;
  later: (work: () => void, wait_ms: number) => void;
  /** Tell the other tabs. */
  tell: () => void;
}

export function createOutbox(around: Surroundings): Outbox {
  const { store, now } = around;
  const holder = uuid7();
  const listeners = new Set<() => void>();
  let state: OutboxState = { acts: [], isSending: false, halt: null };
  let sender: string | null = null;
  let draining: Promise<void> | null = null;
  let isAskedAgain = false;

  function show(change: Partial<OutboxState>): void {
    state = { ...state, ...change };
    for (const listener of listeners) listener();
  }

  async function reload(): Promise<void> {
    show({ acts: await store.all() });
  }

  async function save(acts: readonly KeptAct[]): Promise<void> {
    await store.put(acts);
    await reload();
    around.tell();
  }

  /** The act each studio's queue must send next; strict order, so one that waits holds those behind it. */
  function heads(): KeptAct[] {
    const waiting = state.acts.filter((act) => act.state === "waiting" && act.username === sender);
    const bySlug = new Map([...waiting].reverse().map((act) => [act.slug, act]));
    return [...bySlug.values()].sort((one, other) => one.order - other.order);
  }

  async function take(act: KeptAct, verdict: Verdict): Promise<Halt> {
    switch (verdict.kind) {
      case "heard":
        await save([{ ...act, pin: null, state: "heard", seq: verdict.seq, problem: null }]);
        if (verdict.seq === null) await store.remove([act.order]).then(reload);
        return null;
      case "held":
        await save([{ ...act, pin: null, state: "held", problem: null }]);
        return null;
      case "park": {
        // What happened is told, though its photo is not taken.
        if (act.photo !== null) {
          await save([{ ...act, state: "parked", problem: verdict.problem }, ...withoutPhoto(act, state.acts)]);
          return null;
        }
        const later = state.acts.filter((other) => other.state === "waiting");
        await save(withDependents(act, later).map((one) => ({ ...one, pin: null, state: "parked", problem: verdict.problem })));
        return null;
      }
      case "stop":
        return verdict.why;
      case "retry": {
        const tries = act.tries + 1;
        const own_ms = backoff_ms(tries, around.random);
        const wait_ms = Math.max(own_ms, (verdict.retryAfter_s ?? 0) * 1000);
        await save([{ ...act, tries, waitUntil: now() + wait_ms, isWaitAsked: verdict.retryAfter_s !== null }]);
        around.later(() => void drain(), wait_ms);
        return verdict.why;
      }
    }
  }

  async function sendAll(): Promise<Halt> {
    let halt: Halt = null;
    const held = new Set<string>();
    for (;;) {
      const act = heads().find((head) => !held.has(head.slug));
      if (!act) return halt;
      if (act.waitUntil > now()) {
        around.later(() => void drain(), act.waitUntil - now());
        halt ??= state.halt;
        held.add(act.slug);
        continue;
      }
      if (!(await store.lease(holder, now()))) {
        // Another tab sends, or one that was closed while it sent: look again when its lease is over.
        around.later(() => void drain(), LEASE_MS);
        return halt;
      }
      show({ isSending: true });
      const stopped = await take(act, judge(await around.post(act)));
      if (stopped === null) continue;
      halt = stopped;
      held.add(act.slug);
      if (stopped === "sign_in" || stopped === "signed_off" || stopped === "locked") return halt;
    }
  }

  async function drainOnce(): Promise<void> {
    if (sender === null) return;
    try {
      await reload();
      const halt = await sendAll();
      show({ isSending: false, halt });
    } catch {
      // The phone's own storage failed. The act is where it was; the screen says so, and the next tap tries again.
      show({ isSending: false, halt: "not_kept" });
    } finally {
      await store.release(holder).catch(() => undefined);
      around.tell();
    }
  }

  /** One drain at a time in this tab; a call during one asks for another after it. */
  function drain(): Promise<void> {
    if (draining) {
      isAskedAgain = true;
      return draining;
    }
    const run = async (): Promise<void> => {
      do {
        isAskedAgain = false;
        await drainOnce();
      } while (isAskedAgain);
    };
    draining = run().finally(() => {
      draining = null;
    });
    return draining;
  }

  async function keep(given: NewAct, photos: readonly NewAct[] = []): Promise<string> {
    const act = newAct(given, now());
    try {
      await store.add([...photos.map((photo) => newAct(photo, now())), act]);
      await reload();
    } catch (error) {
      show({ halt: "not_kept" });
      throw error;
    }
    around.tell();
    void drain();
    return act.id;
  }

  return {
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    keep,
    async signIn(username) {
      sender = username;
      show({ halt: null });
      await reload();
      await drain();
    },
    async wake() {
      await reload();
      const eager = heads().filter((act) => act.waitUntil > now() && !act.isWaitAsked);
      if (eager.length > 0) await save(eager.map((act) => ({ ...act, waitUntil: 0 })));
      await drain();
    },
    async askAgain(id, added = {}, pin) {
      const parked = state.acts.filter((act) => act.state === "parked");
      const first = parked.find((act) => act.id === id);
      if (!first) return;
      const again = withDependents({ ...first, pin: pin ?? null, body: { ...first.body, ...added } }, parked);
      await save(again.map((act) => ({ ...act, state: "waiting", problem: null, tries: 0, waitUntil: 0 })));
      await drain();
    },
    async letGo(id) {
      const parked = state.acts.filter((act) => act.state === "parked");
      const first = parked.find((act) => act.id === id);
      if (!first) return;
      await store.remove(withDependents(first, parked).map((act) => act.order));
      await reload();
      around.tell();
    },
    async forgetHeard(slug, seq, madeBefore) {
      const isOld = (act: KeptAct): boolean => Date.parse(act.made_at) < madeBefore.getTime();
      const seen = state.acts.filter((act) => (act.state === "heard" || act.state === "held") && act.slug === slug && ((act.seq ?? Infinity) <= seq || isOld(act)));
      if (seen.length === 0) return;
      await store.remove(seen.map((act) => act.order));
      await reload();
      around.tell();
    },
    reload,
    leave: () => store.release(holder).catch(() => undefined),
  };
}

function newAct(given: NewAct, at: number): Omit<KeptAct, "order"> {
  const id = given.id ?? uuid7(at);
  return {
    id,
    username: given.username,
    memberId: given.memberId ?? null,
    pin: given.pin ?? null,
    slug: given.slug,
    path: given.path,
    body: {
      ...given.fields,
      id,
      happened_at: (given.happenedAt ?? new Date(at)).toISOString(),
      based_on: given.basedOn,
      ...(given.corrects ? { corrects: given.corrects } : {}),
    },
    verb: given.verb,
    about: given.about,
    words: given.words,
    creates: given.creates ?? [],
    photo: given.photo ?? null,
    made_at: new Date(at).toISOString(),
    state: "waiting",
    tries: 0,
    waitUntil: 0,
    isWaitAsked: false,
    seq: null,
    problem: null,
  };
}

/** Later acts that name a photo which was not taken, each without it: the act is kept, the photo is parked. */
function withoutPhoto(photo: KeptAct, acts: readonly KeptAct[]): KeptAct[] {
  const ids = [photo.id, ...photo.creates];
  return acts.flatMap((act) => {
    const named = act.body["photo_ids"];
    if (act.state !== "waiting" || act.order <= photo.order || !Array.isArray(named)) return [];
    const left = named.filter((id) => typeof id !== "string" || !ids.includes(id));
    return left.length === named.length ? [] : [{ ...act, body: { ...act.body, photo_ids: left } }];
  });
}

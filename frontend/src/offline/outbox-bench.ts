/** A bench for testing the outbox: a real store in memory, a studio that answers as told, a clock that is moved by hand. */
import type { Answer } from "../api/answers";
import { openDb } from "./db";
import type { KeptAct } from "./kept-act";
import { createOutbox } from "./outbox";
import type { NewAct, Outbox } from "./outbox";
import { actStore } from "./store";
import type { ActStore } from "./store";

type Answered = Partial<Answer> | null;
export type Reply = (act: KeptAct) => Answered | Promise<Answered>;

export interface Bench {
  outbox: Outbox;
  store: ActStore;
  sent: string[];
  waits: number[];
  clock: { now: number };
  reply: { with: Reply };
}

export const heard: Reply = () => ({ status: 201, body: { journal_seq: 7 } });
export const says = (status: number, type = "", more: Partial<Answer> = {}): Reply => () => ({
  status, body: { type: `/problems/${type}`, title: "No.", detail: "" }, ...more,
});

export async function bench(store?: ActStore): Promise<Bench> {
  const kept = store ?? actStore(await openDb("test"));
  const [sent, waits, clock, reply]: [string[], number[], { now: number }, { with: Reply }] = [[], [], { now: 1_000_000 }, { with: heard }];
  const outbox = createOutbox({
    store: kept,
    post: async (act) => {
      sent.push(act.words);
      const answer = await reply.with(act);
      return answer && { isOurs: true, retryAfter_s: null, status: 0, body: undefined, ...answer };
    },
    now: () => clock.now,
    random: () => 1,
    later: (_work, wait_ms) => waits.push(wait_ms),
    tell: () => undefined,
  });
  return { outbox, store: kept, sent, waits, clock, reply };
}

export const act = (words: string, more: Partial<NewAct> = {}): NewAct => ({
  slug: "barn", username: "nell", path: "/api/v1/studios/barn/parts/1/events/", fields: { kind: "demoulded" },
  basedOn: 3, verb: "demoulded", about: { part_id: "1" }, words, ...more,
});
export const states = (one: Bench): Record<string, string> =>
  Object.fromEntries(one.outbox.state().acts.map((kept) => [kept.words, kept.state]));

/** Keep several before anybody is signed in, so that they go out together. */
export async function keptBefore(one: Bench, ...acts: NewAct[]): Promise<void> {
  for (const each of acts) await one.outbox.keep(each);
}

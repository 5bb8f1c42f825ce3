/** The one outbox and database of this phone, made once and handed to the app. */
import type { Answer } from "../api/answers";
import { handHeaders, send } from "../api/client";
import { OfflineError } from "../api/problem";
import { openDb } from "./db";
import type { KeptAct } from "./kept-act";
import { createOutbox } from "./outbox";
import type { Outbox } from "./outbox";
import { actStore } from "./store";

export interface Phone {
  db: IDBDatabase;
  outbox: Outbox;
  /** Tell the other tabs that somebody else holds the phone: they start anew, and send nothing under the wrong name. */
  tellHolder: () => void;
}

/** Half a megabyte through the thickest wall of a shed. [ms] */
const PHOTO_PATIENCE_MS = 120_000;

/** Send one kept act; `null` when there was no answer. The body is the same at every try but for `sent_at`. */
async function post(act: KeptAct): Promise<Answer | null> {
  const headers = { "Idempotency-Key": act.id, ...handHeaders(act.memberId ?? null, act.pin ?? null) };
  try {
    const patience_ms = act.photo ? PHOTO_PATIENCE_MS : undefined;
    return await send({ method: "POST", path: act.path, headers, body: bodyOf(act), patience_ms });
  } catch (error) {
    if (error instanceof OfflineError) return null;
    throw error;
  }
}

function bodyOf(act: KeptAct): unknown {
  const body = { ...act.body, sent_at: new Date().toISOString() };
  if (!act.photo) return body;
  const form = new FormData();
  for (const [name, value] of Object.entries(body)) form.set(name, typeof value === "string" ? value : JSON.stringify(value));
  form.set("photo", act.photo, "photo.jpg");
  return form;
}

export async function openPhone(): Promise<Phone> {
  const db = await openDb();
  const channel = "BroadcastChannel" in globalThis ? new BroadcastChannel("natch") : null;
  const outbox = createOutbox({
    store: actStore(db),
    post,
    now: () => Date.now(),
    random: Math.random,
    later: (work, wait_ms) => void setTimeout(work, wait_ms),
    tell: () => channel?.postMessage("acts"),
  });
  if (channel) {
    channel.onmessage = ({ data }) => {
      if (data === "holder") location.reload();
      else void outbox.reload();
    };
  }
  addEventListener("online", () => void outbox.wake());
  addEventListener("pagehide", () => void outbox.leave());
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") void outbox.wake();
  });
  // Else a phone short of space may throw away what was kept, without asking.
  if ("storage" in navigator) void navigator.storage.persist().catch(() => false);
  await outbox.reload();
  return { db, outbox, tellHolder: () => channel?.postMessage("holder") };
}


/** The one function that sends a call, and the reads and small writes built on it. */
import { readAnswer } from "./answers";
import type { Answer } from "./answers";
import { OfflineError, ProblemError, problemOf } from "./problem";

/** Longer than the slowest answer we want to wait for, shorter than the drainer's lease. [ms] */
export const PATIENCE_MS = 20_000;

export const API = "/api/v1";

let deviceId: string | null = null;
let shared: SharedCaller | null = null;

/** A phone for everybody calls by its own key, and says who holds it. */
export interface SharedCaller {
  key: string;
  memberId: string | null;
}

/** Name the device once; from then on every call carries it. */
export function setDevice(id: string | null): void {
  deviceId = id;
}

/** From then on every call is the shared phone's, and no cookie goes with it. */
export function setShared(caller: SharedCaller | null): void {
  shared = caller;
}

/** Whose act it is, where that is not who holds the phone by now; and their PIN. */
export function handHeaders(memberId: string | null, pin: string | null): Record<string, string> {
  return { ...(memberId ? { "X-Natch-Member": memberId } : {}), ...(pin ? { "X-Natch-Pin": pin } : {}) };
}

export function csrfToken(cookies: string): string | null {
  const found = /(?:^|;\s*)csrftoken=([^;]+)/.exec(cookies);
  return found?.[1] ? decodeURIComponent(found[1]) : null;
}

export interface Call {
  method: "GET" | "POST" | "PATCH" | "PUT" | "DELETE";
  path: string;
  body?: unknown;
  headers?: Record<string, string>;
  signal?: AbortSignal | undefined;
  /** How long to wait for the answer, where that is not `PATIENCE_MS`. */
  patience_ms?: number | undefined;
}

function headersOf(call: Call): Headers {
  const headers = new Headers({ Accept: "application/json", ...call.headers });
  if (call.body !== undefined && !(call.body instanceof FormData)) headers.set("Content-Type", "application/json");
  if (shared) {
    headers.set("Authorization", `Device ${shared.key}`);
    if (shared.memberId && !headers.has("X-Natch-Member")) headers.set("X-Natch-Member", shared.memberId);
    return headers;
  }
  if (deviceId) headers.set("X-Natch-Device", deviceId);
  const token = csrfToken(document.cookie);
  if (call.method !== "GET" && token) headers.set("X-CSRFToken", token);
  return headers;
}

/** Send it and read the answer. Raises `OfflineError` when there was no answer at all. */
export async function send(call: Call): Promise<Answer> {
  const patience = AbortSignal.timeout(call.patience_ms ?? PATIENCE_MS);
  const signal = call.signal ? AbortSignal.any([call.signal, patience]) : patience;
  const body = call.body instanceof FormData ? call.body : call.body === undefined ? null : JSON.stringify(call.body);
  let response: Response;
  try {
    response = await fetch(call.path, {
      method: call.method, body, signal, headers: headersOf(call), credentials: shared ? "omit" : "same-origin", cache: "no-store",
    });
  } catch (error) {
    if (call.signal?.aborted) throw error;
    throw new OfflineError("no-signal");
  }
  return readAnswer(response);
}

/** The body of a good answer. Raises `ProblemError` when the server said no, `OfflineError` when it was not the server. */
export async function ask<Body>(call: Call): Promise<Body> {
  const answer = await send(call);
  if (!answer.isOurs) throw new OfflineError("no-studio");
  if (answer.status >= 400) throw new ProblemError(problemOf(answer.status, answer.body), answer.retryAfter_s);
  // The server's OpenAPI document is what promises this shape; shapes.ts names it.
  return answer.body as Body;
}

/** Read a screen, a list or a row. */
export async function get<Body>(path: string, signal?: AbortSignal): Promise<Body> {
  return ask<Body>({ method: "GET", path, signal });
}

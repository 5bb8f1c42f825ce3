/** What the outbox does with each answer. Pure: the table, and the waiting times. */
import type { Answer } from "../api/answers";
import { isRecord, problemOf } from "../api/problem";
import type { Problem } from "../api/problem";

export type Verdict =
  | { kind: "heard"; seq: number | null; body: unknown }
  | { kind: "park"; problem: Problem }
  | { kind: "held" }
  | { kind: "stop"; why: "sign_in" | "signed_off" | "locked" }
  | { kind: "retry"; why: "no_signal" | "no_studio"; retryAfter_s: number | null };

const TRY_AGAIN = new Set([408, 425, 429]);

/** Not a no to the act, but to who sends it; null where it is about the act. Signing in again mends all but the lock. */
function stopOf(problem: Problem): Extract<Verdict, { kind: "stop" }> | null {
  if (/\/device-(revoked|signed-off)$/.test(problem.type)) return { kind: "stop", why: "signed_off" };
  if (problem.type.endsWith("/device-locked")) return { kind: "stop", why: "locked" };
  const isStale = problem.status === 401 || /\/(csrf-failed|device-unknown)$/.test(problem.type);
  return isStale ? { kind: "stop", why: "sign_in" } : null;
}

/** Judge one answer; `null` means there was none. */
export function judge(answer: Answer | null): Verdict {
  if (answer === null) return { kind: "retry", why: "no_signal", retryAfter_s: null };
  const { status, retryAfter_s, body } = answer;
  // A proxy in between says it in its own words, and would say so every time.
  if (status === 413) return { kind: "park", problem: problemOf(status, body) };
  if (status >= 500 || TRY_AGAIN.has(status) || !answer.isOurs) return { kind: "retry", why: "no_studio", retryAfter_s };
  if (status === 202 && isRecord(body) && body["held"] === true) return { kind: "held" };
  if (status < 300) {
    const seq = isRecord(body) && typeof body["journal_seq"] === "number" ? body["journal_seq"] : null;
    return { kind: "heard", seq, body };
  }
  const problem = problemOf(status, body);
  return stopOf(problem) ?? { kind: "park", problem };
}

export const FIRST_WAIT_MS = 1_000;
export const LONGEST_WAIT_MS = 5 * 60_000;

/**
 * How long to wait before try number `tries` + 1: doubling from a second to five minutes, and of that a random half to
 * whole, so that six phones coming back into signal do not all knock at once. [ms]
 */
export function backoff_ms(tries: number, random: () => number): number {
  const whole = Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** Math.max(0, tries - 1));
  return whole * (0.5 + random() / 2);
}

/** Small writes that need an answer now: settings of one's own, keys, invitations. They wait for nobody and are not kept. */
import { useState } from "preact/hooks";
import { ask, handHeaders } from "../../api/client";
import type { Call } from "../../api/client";
import { errorAt, OfflineError, ProblemError } from "../../api/problem";
import type { Problem } from "../../api/problem";
import { uuid7 } from "../../offline/ids";
import { studioPath, useSession } from "./session";
import { wholeFault } from "./use-refused";

export interface Claim {
  isAsking: boolean;
  wrongAt: (pointer: string) => string | null;
  /** Every fault the studio named, for who shows them by line. */
  errors: Problem["errors"];
  /** What is wrong with no field in particular; also that there is no signal. */
  wrong: string | null;
  /** The answer, or null when there was none to be had. */
  claim: <Answer>(call: Call) => Promise<Answer | null>;
}

/** What every act says of itself, for those sent at once. */
export function envelope(): { id: string; happened_at: string; based_on: number } {
  return { id: uuid7(), happened_at: new Date().toISOString(), based_on: 0 };
}

export function useClaim(): Claim {
  const [isAsking, setAsking] = useState(false);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [offline, setOffline] = useState<string | null>(null);
  const { membership, pinFor } = useSession();
  const claim = async <Answer>(call: Call): Promise<Answer | null> => {
    const pin = await pinFor(call.path.replace(studioPath(membership.studio.slug, ""), ""));
    setAsking(true);
    setProblem(null);
    setOffline(null);
    try {
      return await ask<Answer>({ ...call, headers: { ...call.headers, ...handHeaders(null, pin) } });
    } catch (error) {
      if (error instanceof ProblemError) setProblem(error.problem);
      else if (error instanceof OfflineError) setOffline(`${error.message} This needs one; nothing was changed.`);
      else throw error;
      return null;
    } finally {
      setAsking(false);
    }
  };
  return { isAsking, claim, errors: problem?.errors ?? [], wrongAt: (pointer) => errorAt(problem, pointer), wrong: offline ?? wholeFault(problem) };
}

/** A form's act that the studio did not take: its typed values stand in the form again, each fault beside its field. */
import type { Problem } from "../../api/problem";
import { errorAt } from "../../api/problem";
import type { KeptAct } from "../../offline/kept-act";
import { useSession } from "./session";
import { useKeptActs } from "./use-outbox";

export interface Refused {
  act: KeptAct | null;
  /** What to say beside a field: `#/mass_g`. */
  wrongAt: (pointer: string) => string | null;
  /** What is wrong with no field in particular. */
  wrong: string | null;
  /** The corrected act is sent in its place. */
  letGo: () => void;
}

/** What stands over the whole form: the detail, when no field has its own fault. */
export function wholeFault(problem: Problem | null): string | null {
  if (problem === null || problem.errors.length > 0) return null;
  return problem.detail || problem.title;
}

/** The last parked act of `verb` about the thing with `id`. */
export function useRefused(verb: string, id: string): Refused {
  const { outbox } = useSession().phone;
  const act = useKeptActs().filter((one) => one.state === "parked" && one.verb === verb && Object.values(one.about).includes(id)).at(-1) ?? null;
  return {
    act,
    wrongAt: (pointer) => errorAt(act?.problem ?? null, pointer),
    wrong: wholeFault(act?.problem ?? null),
    letGo: () => { if (act) void outbox.letGo(act.id); },
  };
}

import type { KeptAct } from "../../offline/kept-act";
import { useKeptActs } from "../common/use-outbox";
import { useSession } from "../common/session";

export interface NotTaken {
  first: KeptAct | null;
  count: number;
  /** True when the studio thinks steps are missing: it takes the act if told that steps went unwritten. */
  isOutOfOrder: boolean;
  askAgain: () => void;
  letGo: () => void;
}

/** Acts the studio said no to, oldest first; those that hang on one are let go with it. */
export function useNotTaken(): NotTaken {
  const { outbox } = useSession().phone;
  const parked = useKeptActs().filter((act) => act.state === "parked");
  const first = parked[0] ?? null;
  // Only a stage may be told as catching up; other acts have nothing to skip.
  const isOutOfOrder = first !== null && first.path.endsWith("/stage-events/") && (first.problem?.type.endsWith("/stage-out-of-order") ?? false);
  return {
    first,
    count: parked.length,
    isOutOfOrder,
    askAgain: () => { if (first) void outbox.askAgain(first.id, isOutOfOrder ? { reason: "catching_up" } : {}); },
    letGo: () => { if (first) void outbox.letGo(first.id); },
  };
}

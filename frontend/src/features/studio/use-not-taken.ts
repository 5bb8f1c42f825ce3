import type { KeptAct } from "../../offline/kept-act";
import { useKeptActs } from "../common/use-outbox";
import { useSession } from "../common/session";

export interface NotTaken {
  first: KeptAct | null;
  count: number;
  askAgain: () => void;
  letGo: () => void;
}

/** Acts the studio said no to, oldest first; those that hang on one are let go with it. */
export function useNotTaken(): NotTaken {
  const { outbox } = useSession().phone;
  const parked = useKeptActs().filter((act) => act.state === "parked");
  const first = parked[0] ?? null;
  return {
    first,
    count: parked.length,
    askAgain: () => { if (first) void outbox.askAgain(first.id); },
    letGo: () => { if (first) void outbox.letGo(first.id); },
  };
}

import type { KeptAct } from "../../offline/kept-act";
import { useKeptActs } from "../common/use-outbox";
import { useSession } from "../common/session";

export interface NotTaken {
  first: KeptAct | null;
  count: number;
  /** True when the studio thinks steps are missing: it takes the act if told that steps went unwritten. */
  isOutOfOrder: boolean;
  /** On a shared phone: whose PIN it takes, as nobody typed it or it was wrong. */
  pinOf: string | null;
  askAgain: () => void;
  letGo: () => void;
}

/** Acts the studio said no to, oldest first; those that hang on one are let go with it. */
export function useNotTaken(): NotTaken {
  const { phone: { outbox }, shared, membership, askPin } = useSession();
  const parked = useKeptActs().filter((act) => act.state === "parked");
  const first = parked[0] ?? null;
  // Only a stage may be told as catching up; other acts have nothing to skip.
  const isOutOfOrder = first !== null && first.path.endsWith("/stage-events/") && (first.problem?.type.endsWith("/stage-out-of-order") ?? false);
  const needsPin = shared !== null && /\/pin-(needed|wrong)$/.test(first?.problem?.type ?? "");
  const whose = first?.memberId === membership.member.id ? membership.member : shared?.people.find((person) => person.id === first?.memberId);
  const pinOf = needsPin ? whose?.first_name ?? null : null;
  const withPin = async (id: string, name: string): Promise<void> => {
    const pin = await askPin(name);
    if (pin !== null) await outbox.askAgain(id, {}, pin);
  };
  return {
    first,
    pinOf,
    count: parked.length,
    isOutOfOrder,
    askAgain: () => {
      if (first && pinOf !== null) void withPin(first.id, pinOf);
      else if (first) void outbox.askAgain(first.id, isOutOfOrder ? { reason: "catching_up" } : {});
    },
    letGo: () => { if (first) void outbox.letGo(first.id); },
  };
}

import { slotWords } from "./load-words";
import type { KeptAct } from "../../offline/kept-act";
import { useAct } from "../common/use-outbox";
import { useSession, useZone } from "../common/session";
import { placingAct } from "./load-acts";
import { refusedLoad, wareOf } from "./refused-load";

export interface Instead {
  words: string;
  go: () => void;
}

/** The way on for ware that a load did not take: the others of the same act, or the next load; null where there is none. */
export function useInstead(act: KeptAct | null): Instead | null {
  const { outbox } = useSession().phone;
  const zone = useZone();
  const keep = useAct();
  const said = act && refusedLoad(act);
  if (act === null || !said) return null;
  if (said.others.length > 0) {
    const without = said.refused.map(({ id }) => id);
    return { words: `Put ${said.others.map(({ mark }) => mark).join(", ")} on`, go: () => void outbox.askAgain(act.id, { except_ids: without }) };
  }
  const { nextLoad } = said;
  if (nextLoad === null || said.refused.length > 0) return null;
  const ware = wareOf(act);
  if (ware.length === 0) return null;
  const [day] = slotWords(nextLoad.starts_at, zone).split(",");
  const go = async (): Promise<void> => {
    const basedOn = act.body["based_on"];
    await keep(placingAct(nextLoad, ware, typeof basedOn === "number" ? basedOn : 0));
    await outbox.letGo(act.id);
  };
  return { words: `Put ${ware.length === 1 ? ware[0]?.mark ?? "it" : "them"} on ${day ?? nextLoad.number} instead`, go: () => void go() };
}

import { useState } from "preact/hooks";
import type { LivesAnswer, OrderAnswer, OutlookAnswer } from "../../api/shapes-orders";
import { useKeptActs } from "../common/use-outbox";
import { useRefused } from "../common/use-refused";
import type { Refused } from "../common/use-refused";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import type { OrderDraft } from "./order-acts";
import { orderView } from "./order-view";
import type { OrderView } from "./order-view";

/** What stands in place of the screen while one more thing is asked. */
export type OrderSheet = "none" | "change" | "words" | "promise" | "assign" | "match" | "plan" | "give" | "end";

export interface Order {
  view: OrderView;
  outlook: OutlookAnswer | null;
  lives: LivesAnswer | null;
  saying: Saying;
  /** Acts with something typed that the studio did not take. */
  refused: { promised: Refused; matched: Refused };
  sheet: OrderSheet;
  open: (sheet: OrderSheet) => void;
  keep: (draft: OrderDraft) => void;
  /** Read the order anew. */
  again: () => void;
}

export function useOrderScreen(id: string): Screen<OrderAnswer> & { again: () => void } {
  return useScreen<OrderAnswer>(`commissions/${id}/`);
}

/** What else is read of an order; the screen stands without it while it has not been heard. */
function useBeside<Value>(path: string): Value | null {
  const screen = useScreen<Value>(path, { every_s: 300 });
  return screen.state === "ready" ? screen.value : null;
}

export function useOrder(snapshot: OrderAnswer, again: () => void): Order {
  const { id, number } = snapshot.commission;
  const view = orderView(snapshot, useKeptActs());
  const outlook = useBeside<OutlookAnswer>(`commissions/${id}/outlook/`);
  const lives = useBeside<LivesAnswer>(`commissions/${id}/lives/`);
  const saying = useSaid(snapshot.journal_seq);
  const refused = { promised: useRefused("promised", id), matched: useRefused("matched", id) };
  const [sheet, open] = useState<OrderSheet>("none");

  const keep = ({ said, ...draft }: OrderDraft): void => {
    if (draft.verb === "promised") refused.promised.letGo();
    if (draft.verb === "matched") refused.matched.letGo();
    void saying.say({ ...draft, basedOn: snapshot.journal_seq, words: `${number}: ${said}` }, said);
    open("none");
  };
  return { view, outlook, lives, saying, refused, sheet, open, keep, again };
}

import { useLocation } from "preact-iso";
import { useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { DesignRow } from "../../api/shapes-moulds";
import type { OrdersAnswer } from "../../api/shapes-orders";
import { uuid7 } from "../../offline/ids";
import { useDraft } from "../common/use-draft";
import { useAct } from "../common/use-outbox";
import { useRefused } from "../common/use-refused";
import { useScreen, useWholeList } from "../common/use-screen";
import { emptyLine, emptyOrder, missing, orderFields, orderTyped, writtenLines } from "./new-order-draft";
import type { DraftLine, OrderDraftForm } from "./new-order-draft";

const FORM = "new-order";

export interface NewOrder {
  draft: OrderDraftForm;
  designs: readonly DesignRow[];
  change: (part: Partial<OrderDraftForm>) => void;
  changeLine: (id: string, part: Partial<DraftLine>) => void;
  addLine: () => void;
  dropLine: (id: string) => void;
  wrongAt: (pointer: string) => string | null;
  wrong: string | null;
  keep: () => void;
  letGo: () => void;
}

export function useNewOrder(): NewOrder {
  const { route } = useLocation();
  const act = useAct();
  const refused = useRefused("took_commission", FORM);
  const again = refused.act;
  // A refused order has a draft of its own, so that one being typed is not lost to it.
  const { draft, change, clear } = useDraft(again ? `${FORM}:${again.id}` : FORM, () => (again ? orderTyped(again.body) : emptyOrder()));
  const [isTried, tryIt] = useState(false);
  const designs = useWholeList<Page<DesignRow>>("designs/", { every_s: 600 });
  const orders = useScreen<OrdersAnswer>("commissions/", { every_s: 600 });
  const faults = missing(draft);

  const changeLines = (lines: DraftLine[]): void => { change({ lines }); };
  const keep = (): void => {
    tryIt(true);
    if (faults.size > 0) return;
    const id = uuid7();
    const about = { form: FORM, commission_id: id, client_name: draft.client.trim(), what: draft.what.trim(), promised_date: draft.promised };
    const words = `Order for ${draft.client.trim()}: ${draft.what.trim()}`;
    const basedOn = orders.state === "ready" ? orders.value.journal_seq : 0;
    refused.letGo();
    const creates = [id, ...writtenLines(draft).map((line) => line.id)];
    void act({ id, path: "commissions/", fields: orderFields(draft), basedOn, verb: "took_commission", about, words, creates }).then(() => {
      clear();
      route("/orders");
    });
  };
  return {
    draft, change, keep, wrong: refused.wrong,
    designs: designs.state === "ready" ? designs.value.results : [],
    changeLine: (id, part) => { changeLines(draft.lines.map((line) => (line.id === id ? { ...line, ...part } : line))); },
    addLine: () => { changeLines([...draft.lines, emptyLine()]); },
    dropLine: (id) => { changeLines(draft.lines.filter((line) => line.id !== id)); },
    wrongAt: (pointer) => refused.wrongAt(pointer) ?? (isTried ? faults.get(pointer) ?? null : null),
    letGo: () => { refused.letGo(); clear(); route("/orders"); },
  };
}

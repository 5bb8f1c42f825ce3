/** The list of orders with what was done on this phone since: new ones, other days, ended ones. */
import type { OrderRow, OrdersAnswer } from "../../api/shapes-orders";
import { unseenBy } from "../../offline/kept-act";
import type { KeptAct } from "../../offline/kept-act";

export interface NewRow {
  id: string;
  client: string;
  what: string;
  promised: string | null;
  isKept: boolean;
}

export interface OrdersView {
  at_risk: OrderRow[];
  on_course: OrderRow[];
  closed: OrderRow[];
  /** Taken on this phone; the studio gives them their number. */
  taken: NewRow[];
}

const STATES: Record<string, OrderRow["state"]> = { closed_commission: "closed", cancelled_commission: "cancelled", reopened_commission: "open" };

function changed(row: OrderRow, acts: readonly KeptAct[]): OrderRow {
  return acts.filter((act) => act.about["commission_id"] === row.id).reduce((now: OrderRow, act) => {
    if (act.verb === "promised") return { ...now, promised_date: act.about["promised_date"] || null };
    if (act.verb === "handed_over" && act.about["closes"]) return { ...now, state: "closed" };
    return { ...now, state: STATES[act.verb] ?? now.state };
  }, row);
}

export function ordersView(snapshot: OrdersAnswer, acts: readonly KeptAct[]): OrdersView {
  const unseen = unseenBy(snapshot.journal_seq, acts);
  const [risk, course, closed] = [snapshot.at_risk, snapshot.on_course, snapshot.closed].map((rows) => rows.map((row) => changed(row, unseen)));
  const isOpen = (row: OrderRow): boolean => row.state === "open";
  const known = new Set([...snapshot.at_risk, ...snapshot.on_course, ...snapshot.closed].map((row) => row.id));
  const ended = [...(risk ?? []), ...(course ?? [])].filter((row) => !isOpen(row));
  return {
    at_risk: (risk ?? []).filter(isOpen),
    on_course: [...(course ?? []), ...(closed ?? [])].filter(isOpen),
    closed: [...ended, ...(closed ?? []).filter((row) => !isOpen(row))],
    taken: unseen
      .filter((act) => act.verb === "took_commission" && !known.has(act.id))
      .map(({ id, about, state }) => ({ id, client: about["client_name"] ?? "", what: about["what"] ?? "", promised: about["promised_date"] || null, isKept: state === "waiting" })),
  };
}

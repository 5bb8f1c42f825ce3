/** The orders: at risk first, then on course, then those that ended. */
import type { OrderRow, OrdersAnswer } from "../../api/shapes-orders";
import { joinFacts, upperFirst } from "../../domain/format";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { awayWords, dueWords, promisedWords, rowEvidence } from "./order-words";
import type { Around } from "./order-words";
import type { NewRow, OrdersView } from "./orders-view";
import { useOrders, useOrdersScreen } from "./use-orders";

export function OrdersScreen() {
  const screen = useOrdersScreen();
  return <WhenHeard title="Orders" screen={screen}>{(value, heardAt) => <Ready snapshot={value} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ snapshot, heardAt }: { snapshot: OrdersAnswer; heardAt: Date | null }) {
  const around = { now: useNow(), zone: useZone() };
  const view = useOrders(snapshot);
  // A shared phone is told nothing of clients, and takes no order of one.
  const tray = useSession().shared
    ? <Tray><MainAct href="/found">Found ware</MainAct></Tray>
    : <Tray><MainAct href="/orders/new">New order</MainAct><Act href="/found">Found ware</Act></Tray>;
  return (
    <Screen title="Orders" heardAt={heardAt} tray={tray}>
      {isEmpty(view) ? <Fact label="" natch="done" value="No orders yet." note="Take the first: it counts what is wanted from then on." /> : <Blocks view={view} around={around} />}
    </Screen>
  );
}

function isEmpty({ at_risk, on_course, closed, taken }: OrdersView): boolean {
  return at_risk.length + on_course.length + closed.length + taken.length === 0;
}

function Blocks({ view: { at_risk, on_course, closed, taken }, around }: { view: OrdersView; around: Around }) {
  return (
    <>
      <Block name="At risk" count={at_risk.length}>{at_risk.map((row) => <Order key={row.id} row={row} around={around} />)}</Block>
      <Block name="On course" count={on_course.length + taken.length}>
        {taken.map((row) => <Taken key={row.id} row={row} around={around} />)}
        {on_course.map((row) => <Order key={row.id} row={row} around={around} />)}
      </Block>
      {closed.length > 0 && <Block name="Ended" count={closed.length}>{closed.map((row) => <Order key={row.id} row={row} around={around} />)}</Block>}
    </>
  );
}

function Order({ row, around }: { row: OrderRow; around: Around }) {
  const isOpen = row.state === "open";
  const isPast = isOpen && row.is_at_risk && row.days_left !== null && row.days_left < 0;
  const due = dueWords(row.promised_date, around);
  const evidence = rowEvidence(row);
  const risk = isOpen && row.is_at_risk ? upperFirst(row.risk_words || "may be late") : null;
  const away = isOpen ? awayWords(row.promised_date, around) : null;
  return (
    <Row
      mark={row.number} noun={due} natch={isPast ? "past" : isOpen && row.is_at_risk ? "hand" : isOpen ? "next" : "done"}
      verdict={row.client_name || row.what} evidence={risk ? joinFacts(risk, evidence) : evidence} href={`/orders/${row.id}`}
      spoken={joinSentence(row.number, row.client_name, row.what, row.promised_date === null ? "no day promised" : `promised ${promisedWords(row.promised_date, around)}`, away, evidence, risk)}
    />
  );
}

/** The row as one sentence for who listens. */
function joinSentence(...parts: (string | null)[]): string {
  return `${parts.filter(Boolean).join(", ").replaceAll(" · ", ", ")}.`;
}

function Taken({ row, around }: { row: NewRow; around: Around }) {
  const due = dueWords(row.promised, around);
  return (
    <Row
      mark="new" noun={due} natch={row.isKept ? "kept" : "today"} verdict={row.client} evidence={joinFacts(row.what, row.isKept && "kept here")}
      spoken={joinSentence("New order", row.client, row.what, row.isKept ? "kept on this phone" : null)}
    />
  );
}

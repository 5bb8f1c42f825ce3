/** One order: how it stands against its promise, where its pieces are, what stands together, what it is for. */
import type { OrderAnswer } from "../../api/shapes-orders";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { OrderApprovals } from "../sharing/order-approvals";
import { useMayShare } from "../sharing/use-share";
import { DeliveryDrawing } from "./delivery";
import { LifeLine } from "./life-line";
import { Lines, Promise, Warnings } from "./order-head";
import { LineBlock } from "./order-lines";
import { OrderSheetScreen } from "./order-sheets";
import { Together } from "./order-together";
import { ClientBlock, UseBlock } from "./order-use";
import { WideOrder } from "./order-wide";
import { outlookOf } from "./order-words";
import type { Around } from "./order-words";
import css from "./order.module.css";
import { isGivable } from "./order-sheet-parts";
import { useOrder, useOrderScreen } from "./use-order";
import type { Order } from "./use-order";
import { useIsWide } from "./use-wide";

export const HOME = "/orders";

export function OrderScreen({ id = "" }: { id?: string }) {
  const screen = useOrderScreen(id);
  return <WhenHeard title="Order" within={HOME} screen={screen}>{(value, heardAt) => <Ready key={id} snapshot={value} again={screen.again} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ snapshot, again, heardAt }: { snapshot: OrderAnswer; again: () => void; heardAt: Date | null }) {
  const around = { now: useNow(), zone: useZone() };
  const order = useOrder(snapshot, again);
  const isWide = useIsWide();
  if (order.sheet !== "none") return <OrderSheetScreen order={order} around={around} />;
  return isWide ? <WideOrder order={order} heardAt={heardAt} around={around} /> : <PhoneOrder order={order} heardAt={heardAt} around={around} />;
}

function PhoneOrder({ order, heardAt, around }: { order: Order; heardAt: Date | null; around: Around }) {
  const { view: { answer }, outlook, lives, saying } = order;
  const { commission, lines } = answer;
  const what = lines.map((line) => line.what).join(", ");
  return (
    <Screen title={commission.number} when={commission.client_name} within={HOME} heardAt={heardAt} tray={<OrderTray order={order} />}>
      <SaidLine mark={commission.number} saying={saying} />
      <Lines answer={answer} outlook={outlook} around={around} />
      <Promise answer={answer} outlook={outlook} around={around} />
      <OrderApprovals answer={answer} around={around} />
      <Warnings answer={answer} />
      {commission.state === "open" && (
        <section aria-label="Delivery">
          <div class={css.head}><h2>Delivery</h2></div>
          <DeliveryDrawing order={commission} outlook={outlook} now={around.now} />
        </section>
      )}
      {lives && lives.pieces.length > 0 && (
        <section aria-label="Life line">
          <div class={css.head}><h2>Life line</h2><span>{what}</span></div>
          <LifeLine lives={lives.pieces} pieces={lines.flatMap((line) => line.pieces)} now={around.now} />
        </section>
      )}
      {lines.map((line) => <LineBlock key={line.id} line={line} outlook={outlookOf(outlook, line.id)} />)}
      <Together order={order} />
      <UseBlock answer={answer} around={around} />
      <ClientBlock answer={answer} around={around} />
    </Screen>
  );
}

function OrderTray({ order }: { order: Order }) {
  const { view: { answer: { commission, lines } }, saying } = order;
  const mayGive = commission.may.change && commission.state === "open" && lines.some((line) => line.pieces.some(isGivable));
  const mayShare = useMayShare(commission);
  const story = `/orders/${commission.id}/story`;
  return (
    <Tray isDead={saying.isDead}>
      <OrderMain order={order} mayGive={mayGive} mayShare={mayShare} story={story} />
      {(mayGive || mayShare) && <Act href={story}>Story</Act>}
      {(commission.may.change || commission.may.plan) && <Act spoken={`${commission.number}: something else`} onPress={() => { order.open("change"); }}>Change…</Act>}
    </Tray>
  );
}

/** Handing over, once there is something; before, showing it to the client; for everybody else, its story. */
function OrderMain({ order, mayGive, mayShare, story }: { order: Order; mayGive: boolean; mayShare: boolean; story: string }) {
  const { id, number } = order.view.answer.commission;
  if (mayGive) return <MainAct spoken={`Hand over ${number}`} onPress={() => { order.open("give"); }}>Hand over…</MainAct>;
  if (mayShare) return <MainAct href={`/orders/${id}/share`} spoken={`Share ${number} with its client`}>Share</MainAct>;
  return <MainAct href={story} wide={`Story of ${number}`}>Story</MainAct>;
}

/** An order on a desk: its facts in one column; its life line across the top of the other, its story below on its own seam. */
import { joinFacts } from "../../domain/format";
import { Act, MainAct } from "../../ui/act";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { OrderApprovals } from "../sharing/order-approvals";
import { useMayShare } from "../sharing/use-share";
import { DeliveryDrawing } from "./delivery";
import { LifeLine } from "./life-line";
import { Lines, Promise, Warnings } from "./order-head";
import { LineBlock } from "./order-lines";
import { isGivable } from "./order-sheet-parts";
import { OrderStory } from "./order-story";
import { Together } from "./order-together";
import { ClientBlock, UseBlock } from "./order-use";
import css from "./order-wide.module.css";
import { outlookOf } from "./order-words";
import type { Around } from "./order-words";
import type { Order } from "./use-order";

export function WideOrder({ order, heardAt, around }: { order: Order; heardAt: Date | null; around: Around }) {
  const { view: { answer, kept }, outlook, lives, saying } = order;
  const { commission, lines } = answer;
  return (
    <Screen
      title={commission.number} when={joinFacts(commission.client_name || null, commission.what)} within="/orders" heardAt={heardAt} isWide
      acts={<HeadActs order={order} />}
    >
      <div class={css.halves}>
        <div class={css.facts}>
          <SaidLine mark={commission.number} saying={saying} />
          <Lines answer={answer} outlook={outlook} around={around} />
          <Promise answer={answer} outlook={outlook} around={around} />
          <OrderApprovals answer={answer} around={around} />
          <Warnings answer={answer} />
          {commission.state === "open" && <section aria-label="Delivery"><h2 class={css.head}>Delivery</h2><DeliveryDrawing order={commission} outlook={outlook} now={around.now} /></section>}
          {lines.map((line) => <LineBlock key={line.id} line={line} outlook={outlookOf(outlook, line.id)} />)}
          <Together order={order} />
          <UseBlock answer={answer} around={around} />
          <ClientBlock answer={answer} around={around} />
        </div>
        <div class={css.story}>
          {lives && lives.pieces.length > 0 && <section aria-label="Life line"><LifeLine lives={lives.pieces} pieces={lines.flatMap((line) => line.pieces)} now={around.now} /></section>}
          <OrderStory orderId={commission.id} kept={kept} around={around} />
        </div>
      </div>
    </Screen>
  );
}

function HeadActs({ order }: { order: Order }) {
  const { commission, lines } = order.view.answer;
  const mayGive = commission.may.change && commission.state === "open" && lines.some((line) => line.pieces.some(isGivable));
  const mayShare = useMayShare(commission);
  return (
    <>
      {mayGive && <MainAct onPress={() => { order.open("give"); }}>Hand over…</MainAct>}
      {mayShare && <Act href={`/orders/${commission.id}/share`}>Share</Act>}
      {(commission.may.change || commission.may.plan) && <Act onPress={() => { order.open("change"); }}>Change…</Act>}
    </>
  );
}

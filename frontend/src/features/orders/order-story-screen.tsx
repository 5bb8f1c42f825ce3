/** The story of an order on a phone: its own screen. On a desk it stands beside the facts. */
import type { OrderAnswer } from "../../api/shapes-orders";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { OrderStory } from "./order-story";
import { WideOrder } from "./order-wide";
import { useOrder, useOrderScreen } from "./use-order";
import { useIsWide } from "./use-wide";
import { OrderSheetScreen } from "./order-sheets";

const HOME = "/orders";

export function OrderStoryScreen({ id = "" }: { id?: string }) {
  const screen = useOrderScreen(id);
  return <WhenHeard title="Story" within={HOME} screen={screen}>{(value, heardAt) => <Ready key={id} snapshot={value} again={screen.again} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ snapshot, again, heardAt }: { snapshot: OrderAnswer; again: () => void; heardAt: Date | null }) {
  const around = { now: useNow(), zone: useZone() };
  const order = useOrder(snapshot, again);
  const isWide = useIsWide();
  const { commission } = snapshot;
  if (order.sheet !== "none") return <OrderSheetScreen order={order} around={around} />;
  if (isWide) return <WideOrder order={order} heardAt={heardAt} around={around} />;
  const tray = (
    <Tray>
      <MainAct href={`/orders/${commission.id}`} wide={`Open ${commission.number}`}>Order</MainAct>
      {commission.may.change && <Act onPress={() => { order.open("change"); }}>Change…</Act>}
    </Tray>
  );
  return (
    <Screen title={`${commission.number} story`} when={commission.client_name} within={HOME} heardAt={heardAt} tray={tray}>
      <OrderStory orderId={commission.id} kept={order.view.kept} around={around} />
    </Screen>
  );
}

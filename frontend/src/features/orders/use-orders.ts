import type { OrdersAnswer } from "../../api/shapes-orders";
import { useKeptActs } from "../common/use-outbox";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import { ordersView } from "./orders-view";
import type { OrdersView } from "./orders-view";

export function useOrdersScreen(): Screen<OrdersAnswer> & { again: () => void } {
  return useScreen<OrdersAnswer>("commissions/");
}

export function useOrders(snapshot: OrdersAnswer): OrdersView {
  return ordersView(snapshot, useKeptActs());
}

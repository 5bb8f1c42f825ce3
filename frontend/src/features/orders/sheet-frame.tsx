import type { ComponentChildren } from "preact";
import { Act } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import type { Order, OrderSheet } from "./use-order";

const HOME = "/orders";

const TITLES: Record<Exclude<OrderSheet, "none">, string> = {
  change: "something else", words: "what is written", promise: "another day", assign: "put a piece in", match: "stand together", plan: "plan more", give: "hand over", end: "close or cancel",
};

/** What is asked, with the act that keeps it nearest the thumb. */
export function SheetFrame({ order, main, children }: { order: Order; main?: ComponentChildren; children: ComponentChildren }) {
  const title = order.sheet === "none" ? "" : TITLES[order.sheet];
  const tray = <Tray>{main}<Act onPress={() => { order.open("none"); }}>Not now</Act></Tray>;
  return <Screen title={order.view.answer.commission.number} when={title} within={HOME} isSeam={false} tray={tray}>{children}</Screen>;
}

/** What the four weeks are drawn from: kilns, their loads, when somebody is in, and what is promised. */
import type { LoadBrief, StudioHours } from "../../api/shapes-firings";
import type { Page } from "../../api/pages";
import type { OrdersAnswer } from "../../api/shapes-orders";
import { useNow } from "../common/use-now";
import { useZone } from "../common/session";
import { useScreen, useWholeList } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import { useKilns } from "./use-kilns";
import type { Kilns } from "./use-kilns";
import { planDays, planOf } from "./weeks-plan";
import type { WeeksPlan } from "./weeks-plan";

export interface Weeks {
  plan: WeeksPlan;
  kilns: Kilns;
  loads: readonly LoadBrief[];
}

export function useWeeks(): Screen<Weeks> & { again: () => void } {
  const zone = useZone();
  const now = useNow(60);
  const days = planDays(now, zone);
  const monday = days[0]?.from.toISOString() ?? now.toISOString();
  const kilns = useKilns();
  const list = useWholeList<Page<LoadBrief>>(`loads/?from=${encodeURIComponent(monday)}`);
  const hours = useScreen<StudioHours>("opening/", { every_s: 600 });
  const orders = useScreen<OrdersAnswer>("commissions/", { every_s: 300 });
  if (kilns.state !== "ready") return kilns;
  if (list.state !== "ready") return list;
  const open = orders.state === "ready" ? [...orders.value.at_risk, ...orders.value.on_course] : [];
  const promises = open.flatMap(({ id, number, promised_date }) => (promised_date === null ? [] : [{ id, words: number, date: promised_date }]));
  const loads = list.value.results;
  const plan = planOf({ kilns: kilns.value.kilns, loads, hours: hours.state === "ready" ? hours.value : null, promises }, now, zone);
  return { ...list, isFresh: list.isFresh && kilns.isFresh, value: { plan, kilns: kilns.value, loads } };
}

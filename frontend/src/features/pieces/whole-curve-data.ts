/** What the whole curve holds, as columns on one row of instants. Pure; the chart is drawn elsewhere. */
import type { DryingAnswer } from "../../api/shapes-pieces";
import { valueAt } from "../../domain/plot";
import { coveredTimes } from "./drying-geometry";

export interface WholeCurveData {
  /** Instants [s since 1970], then water left in per cent: the middle, the low and the high, weighed, felt. */
  columns: [number[], ...(number | null)[][]];
  covers: { from: number; to: number }[];
  now: number;
}

const percentOf = (left: number): number => Math.round(Math.min(1, Math.max(0, left)) * 1000) / 10;

/** Null while nothing has been reckoned. */
export function wholeCurve(drying: DryingAnswer): WholeCurveData | null {
  const { curve, evidence } = drying;
  if (curve === null || curve.t_at.length < 2) return null;
  const times = curve.t_at.map(Date.parse);
  const now = Date.parse(drying.at);
  const seen = evidence.filter(({ kind }) => kind === "weighing" || kind === "check");
  const instants = [...new Set([...times, ...seen.map(({ at }) => Date.parse(at))])].sort((one, other) => one - other);
  const line = (values: readonly number[]): (number | null)[] => instants.map((at) => {
    const value = valueAt(times, values, at);
    return value === null ? null : percentOf(value);
  });
  const points = (kind: "weighing" | "check"): (number | null)[] => instants.map((at) => {
    const one = seen.find((each) => each.kind === kind && Date.parse(each.at) === at);
    if (!one) return null;
    const left = one.water_left ?? valueAt(times, curve.p50, at);
    return left === null ? null : percentOf(left);
  });
  return {
    columns: [instants.map((at) => at / 1000), line(curve.p50), line(curve.p10), line(curve.p90), points("weighing"), points("check")],
    covers: coveredTimes(evidence, times.at(-1) ?? now, now).map(({ from, to }) => ({ from: from / 1000, to: to / 1000 })),
    now: now / 1000,
  };
}

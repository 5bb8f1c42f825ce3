/** The whole curve, drawn by uPlot: band hatched, middle solid, weighings square, touch round, a lid over the times under a cover. */
import { useEffect, useMemo, useRef } from "preact/hooks";
import uPlot from "uplot";
import "uplot/dist/uPlot.min.css";
import type { DryingAnswer } from "../../api/shapes-pieces";
import { date } from "../../domain/clock";
import { useZone } from "../common/session";
import { useBox } from "../common/use-box";
import { wholeCurve } from "./whole-curve-data";
import type { WholeCurveData } from "./whole-curve-data";
import css from "./whole-curve.module.css";

const HEIGHT_REM = 15;
/** A label is a day, and never two of one day. [s] */
const DAYS = [1, 2, 4, 7, 14].map((days) => days * 86_400);

export function WholeCurveChart({ drying }: { drying: DryingAnswer }) {
  const zone = useZone();
  const { ref, box } = useBox<HTMLDivElement>();
  const place = useRef<HTMLDivElement | null>(null);
  const data = useMemo(() => wholeCurve(drying), [drying]);
  useEffect(() => {
    if (!place.current || data === null) return undefined;
    const chart = new uPlot(optionsOf(data, box.width, box.rem, zone), data.columns as uPlot.AlignedData, place.current);
    return () => { chart.destroy(); };
  }, [data, box.width, box.rem, zone]);
  if (data === null) return null;
  return (
    <div ref={ref} class={css.box}>
      <div ref={place} role="img" aria-label="Water left in per cent, from the pressing on: the middle guess, its likely range, weighings and touch. The figures stand in the table above." />
      <p>Squares: by the scale. Rings: by touch. Hatched: the likely range, 4 in 5. Lid: under a cover.</p>
    </div>
  );
}

/** A colour of the look that is on. */
function colour(name: "ink" | "rule" | "paper" | "live" | "pencil"): string {
  return getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();
}

function hatch(ink: string): CanvasPattern | string {
  const tile = document.createElement("canvas");
  const size = Math.round(5 * devicePixelRatio);
  tile.width = size;
  tile.height = size;
  const pen = tile.getContext("2d");
  if (!pen) return "transparent";
  pen.strokeStyle = ink;
  pen.lineWidth = 1.2 * devicePixelRatio;
  pen.beginPath();
  pen.moveTo(0, size);
  pen.lineTo(size, 0);
  pen.stroke();
  return pen.createPattern(tile, "repeat") ?? "transparent";
}

function optionsOf(data: WholeCurveData, width: number, rem: number, zone: string): uPlot.Options {
  const [ink, rule] = [colour("ink"), colour("rule")];
  const font = `500 ${String(Math.max(14, 0.875 * rem))}px "Natch Sans", "Arial Narrow", system-ui`;
  const axis = { font, stroke: ink, grid: { stroke: rule, width: 1 }, ticks: { stroke: ink, width: 1 } };
  const edge = { stroke: ink, width: 1, points: { show: false } };
  const drawnApart: uPlot.Series = { stroke: "transparent", paths: () => null, points: { show: false } };
  return {
    width, height: HEIGHT_REM * rem, legend: { show: false }, cursor: { show: false },
    tzDate: (at) => uPlot.tzDate(new Date(at * 1000), zone),
    scales: { y: { range: [0, 100] } },
    axes: [{ ...axis, space: 4.5 * rem, incrs: DAYS, values: (_chart, splits) => splits.map((at) => date(new Date(at * 1000), new Date(data.now * 1000), zone)) }, { ...axis, size: 3.2 * rem, values: (_chart, splits) => splits.map((value) => `${String(value)}\u202f%`) }],
    series: [{}, { stroke: ink, width: 2, points: { show: false } }, edge, edge, drawnApart, drawnApart],
    bands: [{ series: [3, 2], fill: () => hatch(ink) as string }],
    hooks: { draw: [(chart) => { drawLids(chart, data); drawNow(chart, data.now); drawLooks(chart, data); }] },
  };
}

function drawLids(chart: uPlot, { covers }: WholeCurveData): void {
  const { ctx, bbox } = chart;
  ctx.save();
  ctx.strokeStyle = colour("ink");
  ctx.fillStyle = hatch(colour("ink"));
  ctx.lineWidth = 2 * devicePixelRatio;
  for (const { from, to } of covers) {
    const [left, right] = [chart.valToPos(from, "x", true), chart.valToPos(to, "x", true)];
    ctx.fillRect(left, bbox.top, right - left, 8 * devicePixelRatio);
    ctx.beginPath();
    ctx.moveTo(left, bbox.top);
    ctx.lineTo(right, bbox.top);
    ctx.stroke();
  }
  ctx.restore();
}

function drawNow(chart: uPlot, now: number): void {
  const { ctx, bbox } = chart;
  const x = chart.valToPos(now, "x", true);
  if (x < bbox.left || x > bbox.left + bbox.width) return;
  ctx.save();
  ctx.strokeStyle = colour("live");
  ctx.lineWidth = 2 * devicePixelRatio;
  ctx.beginPath();
  ctx.moveTo(x, bbox.top);
  ctx.lineTo(x, bbox.top + bbox.height);
  ctx.stroke();
  ctx.restore();
}

/** Weighings as squares, touch as rings. */
function drawLooks(chart: uPlot, { columns: [instants, , , , weighed, felt] }: WholeCurveData): void {
  const { ctx } = chart;
  const half = 5.5 * devicePixelRatio;
  ctx.save();
  ctx.strokeStyle = colour("ink");
  ctx.fillStyle = colour("paper");
  ctx.lineWidth = 2 * devicePixelRatio;
  instants.forEach((at, place) => {
    const [scale, touch] = [weighed?.[place], felt?.[place]];
    const left = scale ?? touch;
    if (left === null || left === undefined) return;
    const [x, y] = [chart.valToPos(at, "x", true), chart.valToPos(left, "y", true)];
    ctx.beginPath();
    if (scale === null || scale === undefined) ctx.arc(x, y, half, 0, 2 * Math.PI);
    else ctx.rect(x - half, y - half, 2 * half, 2 * half);
    ctx.fill();
    ctx.stroke();
  });
  ctx.restore();
}

/** The drying curve: water left against days, what happened solid, what is likely hatched; one sentence and its figures. */
import type { DryingAnswer } from "../../api/shapes-pieces";
import { dayAndClock } from "../../domain/clock";
import { mass, percent } from "../../domain/format";
import { useSession, useZone } from "../common/session";
import { useBox } from "../common/use-box";
import css from "./drying-curve.module.css";
import draw from "../../ui/drawing.module.css";
import { drawDrying } from "./drying-geometry";
import type { DryingPicture } from "./drying-geometry";
import { assumedWords, figuresOf } from "./drying-words";
import { WholeCurve } from "./whole-curve";

export function DryingCurve({ drying, now }: { drying: DryingAnswer; now: Date }) {
  const zone = useZone();
  const { ref, box } = useBox<HTMLDivElement>();
  const picture = drawDrying(drying, { ...box, now, zone });
  return <div class={css.box}><div ref={ref}>{picture && <Picture picture={picture} rem={box.rem} />}</div></div>;
}

/** The one sentence under the chart, and its figures behind a tap. */
export function DryingSentence({ drying, now }: { drying: DryingAnswer; now: Date }) {
  return (
    <div class={css.said}>
      <p>{drying.sentence}</p>
      <Figures drying={drying} now={now} />
    </div>
  );
}

function Picture({ picture, rem }: { picture: DryingPicture; rem: number }) {
  const { plot, nowX, dry } = picture;
  const base = plot.bottom;
  const label = 0.35 * rem;
  return (
    <svg class={draw.picture} viewBox={`0 0 ${String(picture.width)} ${String(picture.height)}`} height={picture.height} role="img" aria-label="Water left against days; the figures stand in the table under it.">
      <defs>
        {["ink", "live"].map((name) => (
          <pattern key={name} id={`hatch-${name}`} patternUnits="userSpaceOnUse" width="5" height="5" patternTransform="rotate(45)">
            <path class={name === "live" ? draw.hatchLive : draw.hatch} d="M0 0v5" stroke-width="1.6" />
          </pattern>
        ))}
      </defs>
      <text class={draw.aside} x={0} y={0.8 * rem}>water left</text>
      {picture.grid.map(({ y, words }) => (
        <g key={words}>
          <path class={y === base ? draw.line : draw.grid} d={`M${String(plot.left)} ${String(y)}H${String(plot.right)}`} />
          <text class={draw.end} x={plot.left - 6} y={y + label}>{words}</text>
        </g>
      ))}
      {picture.dayTicks.map((x) => <path key={x} class={draw.line} d={`M${String(x)} ${String(base)}v6`} />)}
      {picture.days.map(({ x, words, isToday }) => (
        <text key={words} class={isToday ? `${draw.middle ?? ""} ${draw.strong ?? ""}` : draw.middle} x={x} y={base + 1.35 * rem}>{words}</text>
      ))}
      <path d={picture.band} fill="url(#hatch-ink)" />
      {picture.edges.map((edge, place) => <path key={place} class={draw.edge} d={edge} />)}
      <path class={draw.line} d={picture.known} />
      <path class={draw.line} d={picture.middle} />
      {dry && (
        <g class={draw.likelyLive}>
          <rect x={dry.left} y={base - 6} width={Math.max(2, dry.right - dry.left)} height={12} fill="url(#hatch-live)" />
          {dry.tick !== null && <path class={draw.tick} d={`M${String(dry.tick)} ${String(base - 9)}v18`} />}
        </g>
      )}
      {picture.covers.map(({ left, right }) => (
        <g key={left}>
          <rect x={left} y={plot.top - 3} width={Math.max(2, right - left)} height={9} fill="url(#hatch-ink)" />
          <path class={draw.line} d={`M${String(left)} ${String(plot.top - 3)}H${String(right)}`} />
          {right - left > 4.5 * rem && <text class={draw.label} x={left + 4} y={plot.top + 1.35 * rem}>covered</text>}
        </g>
      ))}
      {picture.join && (
        <g>
          <path class={draw.line} d={`M${String(picture.join.left)} ${String(base - 12)}v6H${String(picture.join.right)}v-6`} />
          {picture.join.right - picture.join.left > 1.8 * rem && <text class={draw.label} x={picture.join.left + 3} y={base - 12}>join</text>}
        </g>
      )}
      <path class={draw.now} d={`M${String(nowX)} ${String(plot.top)}V${String(base)}`} />
      <path class={draw.natch} d={`M${String(nowX - 7)} ${String(plot.top)}a7 7 0 0 0 14 0z`} />
      <text class={`${draw.middle ?? ""} ${draw.strong ?? ""}`} x={nowX} y={plot.top - 0.5 * rem}>now</text>
      {picture.seen.map(({ kind, x, y }) => (kind === "weighing"
        ? <rect key={`w${String(x)}`} class={draw.square} x={x - 6} y={y - 6} width={12} height={12} />
        : <circle key={`c${String(x)}`} class={draw.square} cx={x} cy={y} r={5.5} />))}
    </svg>
  );
}

/** The picture as a table; it is also what a screen reader hears. */
function Figures({ drying, now }: { drying: DryingAnswer; now: Date }) {
  const zone = useZone();
  const { units } = useSession().membership.member;
  const { ahead, seen } = figuresOf(drying, now, zone);
  if (ahead.length === 0 && seen.length === 0) return null;
  return (
    <details class={draw.details}>
      <summary>as figures</summary>
      <table class={draw.table}>
        <thead><tr><th scope="col">when</th><th scope="col">water left</th></tr></thead>
        <tbody>
          {seen.map((one) => (
            <tr key={one.at}>
              <th scope="row">{dayAndClock(new Date(one.at), now, zone)}</th>
              <td>{one.mass_g === undefined ? `felt ${one.words ?? ""}` : `weighed ${mass(one.mass_g, units)}`}, {one.member}</td>
            </tr>
          ))}
          {ahead.map(({ at, low, middle, high }) => (
            <tr key={at.getTime()}>
              <th scope="row">{dayAndClock(at, now, zone)}</th>
              <td>about {percent(middle)}, likely {percent(low)} to {percent(high)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {drying.assumed.length > 0 && <p>Assumed: {assumedWords(drying.assumed)}.</p>}
      {drying.covering.cracking && <p>{drying.covering.cracking.note}</p>}
      <WholeCurve drying={drying} />
      <ul>{drying.sources.map((source) => <li key={source}>{source}</li>)}</ul>
    </details>
  );
}

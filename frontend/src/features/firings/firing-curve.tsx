/** The firing curve: readings solid with squares, the programme dotted, hours that really passed, and the gap under it. */
import type { LoadWhole } from "../../api/shapes-firings";
import { dayAndClock } from "../../domain/clock";
import { halves, temperature, THIN } from "../../domain/format";
import { useSession, useZone } from "../common/session";
import { useBox } from "../common/use-box";
import { drawCurve, gapOf } from "./curve-geometry";
import type { CurvePicture } from "./curve-geometry";
import draw from "../../ui/drawing.module.css";

export function FiringCurve({ load, now }: { load: LoadWhole; now: Date }) {
  const { units } = useSession().membership.member;
  const { ref, box } = useBox<HTMLDivElement>();
  const picture = drawCurve(load, { ...box, unit: units.temperature, now });
  return (
    <div class={draw.box}>
      <div ref={ref}>{picture && <Picture picture={picture} rem={box.rem} />}</div>
      <p class={draw.said}>{sentence(load)}</p>
      <Figures load={load} now={now} />
    </div>
  );
}

function sentence({ readings, curve, times }: LoadWhole): string {
  if (readings.length === 0) return curve.length > 0 ? "Dotted: the programme. No reading yet." : "No reading yet, and no programme to follow.";
  const asked = readings.filter(({ use }) => use === "asked" || use === "left_out").length;
  const left = asked > 0 ? ` ${String(asked)} asked about, not drawn.` : "";
  return `Squares: readings, by hours since it was lit.${curve.length > 0 ? " Dotted: the programme." : ""}${times.stopped_at === null ? "" : " A break: no power."}${left}`;
}

function Picture({ picture, rem }: { picture: CurvePicture; rem: number }) {
  const { plot, gap, clockChange, nowX } = picture;
  const label = 0.35 * rem;
  return (
    <svg class={draw.picture} viewBox={`0 0 ${String(picture.width)} ${String(picture.height)}`} height={picture.height} role="img" aria-label="Temperature against hours since it was lit; the figures stand in the table under it.">
      <text x={0} y={0.9 * rem}>{picture.unit}</text>
      {picture.grid.map(({ y, words }, place) => (
        <g key={words}>
          <path class={place === 0 ? draw.line : draw.grid} d={`M${String(plot.left - (place === 0 ? 6 : 0))} ${String(y)}H${String(plot.right)}`} />
          <text class={draw.end} x={plot.left - 8} y={y + label}>{words}</text>
        </g>
      ))}
      {picture.hours.map(({ x, words }) => (
        <g key={words}>
          <path class={draw.line} d={`M${String(x)} ${String(plot.bottom)}v6`} />
          <text class={draw.middle} x={x} y={plot.bottom + 1.4 * rem}>{words}</text>
        </g>
      ))}
      <path class={draw.ahead} d={picture.programme} />
      {picture.known.map((path) => <path key={path} class={draw.line} d={path} />)}
      {picture.squares.map(({ x, y }) => <rect key={`${String(x)} ${String(y)}`} class={draw.square} x={x - 4.5} y={y - 4.5} width={9} height={9} />)}
      {clockChange && (
        <g>
          <path class={draw.line} d={`M${String(clockChange.x)} ${String(plot.top)}V${String(plot.bottom)}`} />
          <path class={draw.solid} d={`M${String(clockChange.x - 7)} ${String(plot.top)}a7 7 0 0 0 14 0z`} />
          <text class={draw.strong} text-anchor={clockChange.anchor} x={clockChange.x + (clockChange.anchor === "end" ? -10 : 10)} y={plot.top - 4}>{clockChange.words}</text>
        </g>
      )}
      {nowX !== null && (
        <g>
          <path class={draw.now} d={`M${String(nowX)} ${String(plot.top)}V${String(plot.bottom)}`} />
          <path class={draw.natch} d={`M${String(nowX - 7)} ${String(plot.top)}a7 7 0 0 0 14 0z`} />
        </g>
      )}
      {gap && (
        <g>
          <text class={draw.end} x={plot.left - 8} y={gap.y + label}>gap</text>
          <path class={draw.line} d={`M${String(plot.left - 6)} ${String(gap.y)}H${String(plot.right)}`} />
          {gap.bars.map((bar) => <rect key={String(bar.x)} class={draw.solid} x={bar.x} y={bar.y} width={bar.width} height={bar.height} />)}
          {gap.worst && <text class={draw.strong} text-anchor={gap.worst.anchor} x={gap.worst.x} y={gap.worst.y}>{gap.worst.words}</text>}
        </g>
      )}
    </svg>
  );
}

const USES: Record<string, string> = { asked: "asked about", left_out: "left out", over_top: "over its top" };

/** The picture as a table; it is also what a screen reader hears. */
function Figures({ load, now }: { load: LoadWhole; now: Date }) {
  const zone = useZone();
  const { units } = useSession().membership.member;
  if (load.readings.length === 0) return null;
  return (
    <details class={draw.details}>
      <summary>as figures</summary>
      <table class={draw.table}>
        <thead><tr><th scope="col">since lit</th><th scope="col">reads</th><th scope="col">gap</th><th scope="col">at</th></tr></thead>
        <tbody>
          {load.readings.map((reading) => {
            const gap = gapOf(reading, load.curve);
            return (
              <tr key={reading.id}>
                <td>{reading.elapsed_h === null ? "" : `${halves(reading.elapsed_h)}${THIN}h`}</td>
                <td>{temperature(reading.reading_c, units)}{USES[reading.use] ? `, ${USES[reading.use] ?? ""}` : ""}</td>
                <td>{gap === null ? "" : gapWords(gap, units.temperature)}</td>
                <td>{dayAndClock(new Date(reading.taken_at), now, zone)}, {reading.member.first_name}{reading.words ? `: ${reading.words}` : ""}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </details>
  );
}

function gapWords(gap: number, unit: "c" | "f"): string {
  const figure = Math.round(Math.abs(gap) * (unit === "c" ? 1 : 1.8));
  return figure === 0 ? "0" : `${String(figure)} ${gap < 0 ? "under" : "over"}`;
}

/** Four weeks of kilns: black firing, hatch cooling, thin line waits to be opened, outline booked; promises hang in the lowest lane. */
import { useBox } from "../common/use-box";
import css from "./pictures.module.css";
import draw from "../../ui/drawing.module.css";
import { drawWeeks } from "./weeks-geometry";
import type { WeekBar, WeekRow, WeeksPicture as Drawn } from "./weeks-geometry";
import type { WeeksPlan } from "./weeks-plan";

export function WeeksPicture({ plan, now, zone, isDesk }: { plan: WeeksPlan; now: Date; zone: string; isDesk: boolean }) {
  const { ref, box } = useBox<HTMLDivElement>();
  const picture = drawWeeks(plan, { ...box, now, zone, daysInRow: isDesk ? 28 : 7 });
  const px = Math.max(14, 0.875 * box.rem);
  return (
    <div class={isDesk ? undefined : draw.box}>
      <div ref={ref}>
        <svg class={draw.picture} viewBox={`0 0 ${String(picture.width)} ${String(picture.height)}`} height={picture.height} role="img" aria-label="Four weeks of kilns, day by day; the loads stand in the list under it.">
          <defs>
            {[["weeks-hatch", draw.hatch], ["weeks-light", draw.hatchLight]].map(([id, style]) => (
              <pattern key={id} id={id} patternUnits="userSpaceOnUse" width={id === "weeks-light" ? "8" : "5"} height={id === "weeks-light" ? "8" : "5"} patternTransform="rotate(45)"><path class={style} d="M0 0v8" /></pattern>
            ))}
          </defs>
          {picture.weekdays.map(({ middle, words }, place) => <text key={place} class={draw.middle} x={middle} y={px}>{words}</text>)}
          {picture.rows.map((row) => <Row key={row.key} row={row} picture={picture} px={px} isDesk={isDesk} />)}
        </svg>
      </div>
    </div>
  );
}

function Row({ row, picture: { width }, px, isDesk }: { row: WeekRow; picture: Drawn; px: number; isDesk: boolean }) {
  const lanesTop = row.lanes[0]?.y ?? row.top;
  const lastLane = row.lanes.at(-1);
  const lanesEnd = lastLane ? lastLane.y + lastLane.height : row.bottom;
  return (
    <g>
      {!isDesk && <path class={draw.line} d={`M0 ${String(row.top)}H${String(width)}`} />}
      {row.closed.map(({ x, width: wide }) => <rect key={x} fill="url(#weeks-light)" x={x} y={lanesTop} width={wide} height={lanesEnd - lanesTop} />)}
      {row.days.map(({ x, middle, words, isToday }, place) => (
        <g key={x}>
          {(place > 0 || isDesk) && <path class={draw.grid} d={`M${String(x)} ${String(lanesTop)}V${String(lanesEnd)}`} />}
          <text class={`${draw.middle ?? ""} ${isToday ? draw.strong ?? "" : ""}`} x={middle} y={lanesTop - 0.4 * px}>{words}</text>
        </g>
      ))}
      {row.weekStarts.map(({ x, words }) => (
        <g key={x}>
          <path class={css.weekLine} d={`M${String(x)} ${String(row.top)}V${String(row.bottom)}`} />
          <text class={draw.strong} x={x + 8} y={row.top + 1.1 * px}>{`Week of ${words}`}</text>
        </g>
      ))}
      {row.lanes.map(({ id, y, height, number, name }, place) => (
        <g key={id}>
          {isDesk && <path class={place === 0 ? draw.line : draw.grid} d={`M0 ${String(y)}H${String(width)}`} />}
          <text class={draw.strong} x={0} y={y + height / 2 + 0.36 * px}>{number}</text>
          {isDesk && <text x={2.2 * px} y={y + height / 2 + 0.36 * px}>{name}</text>}
        </g>
      ))}
      {isDesk && <path class={draw.line} d={`M0 ${String(lanesEnd)}H${String(width)}`} />}
      {isDesk && <text x={0} y={lanesEnd + 1.4 * px}>Promised</text>}
      {row.bars.map((bar) => <Bar key={bar.key} bar={bar} />)}
      {row.labels.map(({ key, x, y, words, anchor }) => <text key={key} class={draw.label} text-anchor={anchor} x={x} y={y}>{words}</text>)}
      {row.promises.map(({ key, x, y, words, anchor, flagX, flagY }) => (
        <g key={key}>
          <path class={draw.natch} d={`M${String(flagX - 8)} ${String(flagY - 0.4 * px)}a8 8 0 0 0 16 0z`} />
          <text class={draw.promise} text-anchor={anchor} x={x} y={y}>{words}</text>
        </g>
      ))}
      {row.nowX !== null && (
        <g>
          <path class={draw.now} d={`M${String(row.nowX)} ${String(lanesTop)}V${String(lanesEnd)}`} />
          <path class={draw.natch} d={`M${String(row.nowX - 7)} ${String(lanesTop)}a7 7 0 0 0 14 0z`} />
        </g>
      )}
    </g>
  );
}

function Bar({ bar: { kind, x, y, width, height, isEnded } }: { bar: WeekBar }) {
  const box = { x, y, width, height };
  switch (kind) {
    case "firing":
      return <rect class={draw.solid} {...box} />;
    case "cooling":
      return <rect class={draw.likely} fill="url(#weeks-hatch)" {...box} />;
    case "booked":
      return <rect class={draw.booked} {...box} />;
    case "waits":
      return <path class={css.waits} d={`M${String(x)} ${String(y + height)}h${String(width)}${isEnded ? `v${String(-height)}` : ""}`} />;
  }
}

const LEGEND = [
  { words: "firing", draw: <rect class={draw.solid} x={1} y={3} width={26} height={16} /> },
  { words: "cooling", draw: <rect class={draw.likely} fill="url(#weeks-hatch)" x={1} y={3} width={26} height={16} /> },
  { words: "till it can be opened", draw: <path class={css.waits} d="M1 19h26v-16" /> },
  { words: "booked, with a day to cool", draw: <><rect class={draw.booked} x={1} y={3} width={26} height={16} /><rect class={draw.solid} x={1} y={3} width={9} height={16} /></> },
  { words: "nobody in", draw: <rect fill="url(#weeks-light)" x={1} y={3} width={26} height={16} /> },
  { words: "promised", draw: <path class={draw.natch} d="M6 6a8 8 0 0 0 16 0z" /> },
] as const;

/** Only a desk has room for it; on a phone the sentence under the picture says the same. */
export function WeeksLegend() {
  return (
    <ul class={css.legend}>
      {LEGEND.map(({ words, draw }) => <li key={words}><svg viewBox="0 0 28 22" width="28" height="22" aria-hidden="true">{draw}</svg>{words}</li>)}
    </ul>
  );
}

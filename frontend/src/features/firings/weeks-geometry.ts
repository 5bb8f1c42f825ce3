/** Where everything of the four weeks stands: weeks under weeks, or side by side on a desk. Pixels of its own box. */
import { wallTime } from "../../domain/clock";
import type { DayMark } from "../../domain/plot";
import { isoDay } from "./weeks-plan";
import type { BarKind, WeeksPlan } from "./weeks-plan";

const LETTER = 0.56;
const DAY_MS = 24 * 3_600_000;

export interface WeekBar {
  key: string;
  loadId: string;
  kind: BarKind;
  x: number;
  y: number;
  width: number;
  height: number;
  /** False where the bar goes on in the row before or after. */
  isBegun: boolean;
  isEnded: boolean;
}

export interface WeekLabel {
  key: string;
  x: number;
  y: number;
  words: string;
  anchor: "start" | "end" | "middle";
}

export interface WeekRow {
  key: string;
  top: number;
  bottom: number;
  days: { x: number; middle: number; words: string; isToday: boolean }[];
  /** From which x on a new week begins. */
  weekStarts: { x: number; words: string }[];
  closed: { x: number; width: number }[];
  lanes: { id: string; y: number; height: number; number: string; name: string }[];
  bars: WeekBar[];
  labels: WeekLabel[];
  promises: (WeekLabel & { flagX: number; flagY: number })[];
  nowX: number | null;
}

export interface WeeksPicture {
  width: number;
  height: number;
  left: number;
  /** One letter for each column, where a row is one week. */
  weekdays: { middle: number; words: string }[];
  rows: WeekRow[];
}

export interface WeeksAround {
  width: number;
  rem: number;
  now: Date;
  zone: string;
  /** 7: weeks under weeks; 28: side by side. */
  daysInRow: 7 | 28;
}

interface Row {
  days: readonly DayMark[];
  from: number;
  to: number;
  xOf: (at: Date) => number;
}

const round = (pixel: number): number => Math.round(pixel * 10) / 10;

function rowOf(days: readonly DayMark[], left: number, width: number): Row {
  const starts = days.map((mark) => mark.from.getTime());
  const last = days.at(-1);
  // Noon to noon is whole days; the end of the last day is told from its noon.
  const end = last === undefined ? 0 : last.middle.getTime() + DAY_MS / 2;
  const edges = [...starts, end];
  const column = (width - left) / Math.max(1, days.length);
  const xOf = (at: Date): number => {
    const time = at.getTime();
    if (time <= (edges[0] ?? 0)) return left;
    if (time >= end) return width;
    const place = starts.findLastIndex((start) => start <= time);
    const [from, to] = [edges[place] ?? 0, edges[place + 1] ?? end];
    return round(left + (place + (time - from) / (to - from)) * column);
  };
  return { days, from: edges[0] ?? 0, to: end, xOf };
}

export function drawWeeks(plan: WeeksPlan, around: WeeksAround): WeeksPicture {
  const { width, rem, daysInRow } = around;
  const isDesk = daysInRow === 28;
  const px = Math.max(14, 0.875 * rem);
  const left = isDesk ? 6.25 * rem : 2.4 * px;
  const rows: WeekRow[] = [];
  let y = isDesk ? 0 : 1.5 * px;
  for (let first = 0; first < plan.days.length; first += daysInRow) {
    const row = rowOf(plan.days.slice(first, first + daysInRow), left, width);
    const drawn = drawRow(plan, row, { ...around, px, left, first, top: y });
    rows.push(drawn);
    y = drawn.bottom + 2;
  }
  const column = (width - left) / daysInRow;
  return {
    width, height: Math.round(y), left, rows,
    weekdays: isDesk ? [] : plan.days.slice(0, 7).map(({ weekday }, place) => ({ middle: left + (place + 0.5) * column, words: weekday.charAt(0) })),
  };
}

interface RowAround extends WeeksAround {
  px: number;
  left: number;
  /** The place of the row's first day among all. */
  first: number;
  top: number;
}

function drawRow(plan: WeeksPlan, row: Row, around: RowAround): WeekRow {
  const { px, left, first, top, width, daysInRow, now, zone } = around;
  const isDesk = daysInRow === 28;
  const column = (width - left) / daysInRow;
  const head = isDesk ? 3 * px : 1.5 * px;
  const laneHeight = isDesk ? 4 * px : Math.max(28, 2 * px);
  const lanes = plan.kilns.map((kiln, place) => ({ ...kiln, y: top + head + place * laneHeight, height: laneHeight }));
  const lanesEnd = top + head + lanes.length * laneHeight;
  const bottom = lanesEnd + (isDesk ? 3 : 2) * px;
  const drawn = plan.loads.flatMap((load) => {
    const lane = lanes.find(({ id }) => id === load.kilnId);
    return lane ? [{ load, lane, bars: barsIn(load, row, lane, px) }] : [];
  });
  const days = row.days.map((mark, place) => ({ x: round(left + place * column), middle: round(left + (place + 0.5) * column), words: String(mark.day), isToday: mark.isToday }));
  return {
    key: String(first), top, bottom, days,
    weekStarts: isDesk ? row.days.flatMap((mark, place) => (place % 7 === 0 ? [{ x: days[place]?.x ?? left, words: `${String(mark.day)} ${wallTime(mark.middle, zone).monthName}` }] : [])) : [],
    closed: row.days.flatMap((_, place) => (plan.closed.has(first + place) ? [{ x: round(left + place * column), width: round(column) }] : [])),
    lanes,
    bars: drawn.flatMap(({ bars }) => bars),
    labels: labelsOf(drawn, { px, left, width }),
    promises: promisesIn(plan, row, { lanesEnd, px, left, column, zone, isDesk }),
    nowX: now.getTime() >= row.from && now.getTime() < row.to ? row.xOf(now) : null,
  };
}

interface Lane {
  y: number;
  height: number;
}

function barsIn({ id, bars }: WeeksPlan["loads"][number], row: Row, lane: Lane, px: number): WeekBar[] {
  const height = Math.min(26, 1.75 * px);
  const y = round(lane.y + (lane.height - height) / 2);
  return bars.filter(({ from, to }) => from.getTime() < row.to && to.getTime() > row.from).map(({ kind, from, to }) => {
    const [start, end] = [row.xOf(from), row.xOf(to)];
    return {
      key: `${id}-${kind}`, loadId: id, kind, x: start, y, width: Math.max(3, round(end - start)), height,
      isBegun: from.getTime() >= row.from, isEnded: to.getTime() <= row.to,
    };
  });
}

interface DrawnLoad {
  load: WeeksPlan["loads"][number];
  lane: Lane;
  bars: readonly WeekBar[];
}

type Extent = readonly [number, number];

/** Right of its bar where there is room, else left of it, else nowhere: the list under the picture names it all the same. */
function labelsOf(drawn: readonly DrawnLoad[], { px, left, width }: { px: number; left: number; width: number }): WeekLabel[] {
  const taken = new Map<Lane, Extent[]>();
  for (const { lane, bars } of drawn) taken.set(lane, [...(taken.get(lane) ?? []), ...bars.map((bar): Extent => [bar.x, bar.x + bar.width])]);
  return drawn.flatMap(({ load, lane, bars }): WeekLabel[] => {
    // A load is named once, in the row where it begins.
    if (bars.length === 0 || bars.some((bar) => !bar.isBegun)) return [];
    const [from, to] = [Math.min(...bars.map((bar) => bar.x)), Math.max(...bars.map((bar) => bar.x + bar.width))];
    const long = load.number.length * LETTER * px + 6;
    const inLane = taken.get(lane) ?? [];
    const isFree = ([start, end]: Extent): boolean => start >= left && end <= width && !inLane.some(([one, other]) => start < other - 1 && one + 1 < end);
    const label = { key: `${load.id}-label`, y: round(lane.y + lane.height / 2 + px * 0.36), words: load.number };
    const [after, before]: [Extent, Extent] = [[to + 2, to + long], [from - long, from - 2]];
    if (isFree(after)) {
      inLane.push(after);
      return [{ ...label, x: to + 6, anchor: "start" }];
    }
    if (!isFree(before)) return [];
    inLane.push(before);
    return [{ ...label, x: from - 6, anchor: "end" }];
  });
}

interface PromiseAround {
  lanesEnd: number;
  px: number;
  left: number;
  column: number;
  zone: string;
  isDesk: boolean;
}

/** The lowest lane: a promise hangs from the middle of its day, its words under it on a desk, else beside it. */
function promisesIn(plan: WeeksPlan, row: Row, { lanesEnd, px, left, column, zone, isDesk }: PromiseAround): WeekRow["promises"] {
  const byDay = new Map<number, string[]>();
  for (const { date, words } of plan.promises) {
    const place = row.days.findIndex((mark) => isoDay(mark.middle, zone) === date);
    if (place >= 0) byDay.set(place, [...(byDay.get(place) ?? []), words]);
  }
  return [...byDay].map(([place, words]) => {
    const flagX = round(left + (place + 0.5) * column);
    const said = words.length > 2 ? `${words[0] ?? ""} and ${String(words.length - 1)} more` : words.join(", ");
    if (isDesk) return { key: `${String(place)}-${said}`, words: said, flagX, flagY: lanesEnd + px * 0.4, x: flagX, y: round(lanesEnd + px * 1.8), anchor: "middle" as const };
    const isLeft = flagX - 16 - said.length * LETTER * px > left;
    const label = { key: `${String(place)}-${said}`, words: said, flagX, flagY: lanesEnd + px * 0.4, y: round(lanesEnd + px * 1.05) };
    return isLeft ? { ...label, x: flagX - 12, anchor: "end" as const } : { ...label, x: flagX + 12, anchor: "start" as const };
  });
}

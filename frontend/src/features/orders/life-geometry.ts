/** The life line of an order: one strip for each piece on the same days. Where everything stands; nothing here draws. */
import type { LifeSpan, PieceLife } from "../../api/shapes-orders";
import { placeOn } from "../../domain/plot";
import type { Axis } from "../../domain/plot";
import { marksFrom, mondayOf, stepFor } from "./time-marks";

const DAY_MS = 86_400_000;
/** So much of what is drawn lies ahead of now. */
const AHEAD = 0.22;
const LEAST_AHEAD_MS = 2 * DAY_MS;
/** Where nothing has a length of its own: a piece pressed this morning still shows. [px] */
const LEAST_PX = 4;
/** More pieces than this stand closer together. */
const ROOMY = 12;

export type BarKind = "mould" | "out" | "covered" | "open" | "waiting" | "kiln";

export interface Bar {
  kind: BarKind;
  from: number;
  to: number;
}

export interface Strip {
  id: string;
  mark: string;
  /** The base line of the strip. */
  y: number;
  bars: Bar[];
  /** Where it was lost. */
  cross: number | null;
  /** Where it was handed over. */
  end: number | null;
  /** What is to come, dotted. */
  ahead: { from: number; to: number } | null;
}

export interface LifePicture {
  width: number;
  height: number;
  top: number;
  bottom: number;
  left: number;
  /** The height of a strip. [px] */
  thick: number;
  nowX: number;
  /** Where the words beside the strips begin. */
  asideX: number;
  strips: Strip[];
  weeks: { x: number; words: string }[];
}

const BARS: Record<string, BarKind | "drying"> = {
  in_mould: "mould", out: "out", joined: "out", drying: "drying", bone_dry: "waiting", in_bisque: "kiln", bisqued: "waiting",
  glazed: "waiting", in_glaze: "kiln", glaze_fired: "waiting", checked: "waiting", packed: "waiting",
};

/** How a span is drawn; null where it has no clay yet, or no more. */
export function barOf({ state, cover }: Pick<LifeSpan, "state" | "cover">): BarKind | null {
  const kind = BARS[state] ?? null;
  if (kind !== "drying") return kind;
  return cover === "" || cover === "open" ? "open" : "covered";
}

interface Around {
  width: number;
  rem: number;
  now: Date;
  zone: string;
  /** Room right of the days, for words. [px] */
  aside?: number;
}

const begins = (life: PieceLife): number[] => life.spans.filter((span) => barOf(span) !== null).map((span) => Date.parse(span.from_at));

/** Null while no piece has any clay in it. */
export function drawLives(lives: readonly PieceLife[], { width, rem, now, zone, aside = 0 }: Around): LifePicture | null {
  const starts = lives.flatMap(begins);
  if (starts.length === 0) return null;
  const at = now.getTime();
  const from = mondayOf(new Date(Math.min(...starts, at)), zone).getTime();
  const to = at + Math.max(LEAST_AHEAD_MS, ((at - from) * AHEAD) / (1 - AHEAD));
  const px = Math.max(14, 0.875 * rem);
  const pitch = lives.length > ROOMY ? 1.55 * px : 2.1 * px;
  const left = 3 * px;
  const axis: Axis = { from, to, start: left, end: width - 4 - aside };
  const top = 1.6 * px;
  const strips = lives.map((life, place) => stripOf(life, axis, now, Math.round(top + (place + 0.85) * pitch)));
  return {
    width, top, left, strips, nowX: placeOn(axis, at), asideX: axis.end + 10, thick: Math.round(0.85 * px),
    bottom: Math.round(top + (lives.length + 0.15) * pitch), height: Math.round(top + (lives.length + 0.25) * pitch),
    weeks: weeksOf(axis, now, px, zone),
  };
}

function stripOf(life: PieceLife, axis: Axis, now: Date, y: number): Strip {
  const at = now.getTime();
  const place = (time: number): number => placeOn(axis, Math.min(time, axis.to));
  const bars = life.spans.flatMap((span) => {
    const kind = barOf(span);
    if (kind === null) return [];
    const from = place(Date.parse(span.from_at));
    const to = place(span.until_at === null ? at : Date.parse(span.until_at));
    return [{ kind, from, to: kind === "waiting" ? to : Math.max(to, from + LEAST_PX) }];
  });
  const last = life.spans.at(-1);
  const ended = last && (last.stage === "lost" || last.stage === "delivered") ? place(Date.parse(last.from_at)) : null;
  return {
    id: life.id, mark: life.mark, y, bars,
    cross: last?.stage === "lost" ? ended : null,
    end: last?.stage === "delivered" ? ended : null,
    ahead: ended === null ? { from: Math.max(place(at) + 4, bars.at(-1)?.to ?? 0), to: axis.end } : null,
  };
}

/** Mondays; none so near to *now* that the words would touch it. */
function weeksOf(axis: Axis, now: Date, px: number, zone: string): LifePicture["weeks"] {
  const [from, to] = [new Date(axis.from), now];
  const most = Math.max(2, Math.floor((placeOn(axis, now.getTime()) - axis.start) / (2.8 * px)));
  const nowX = placeOn(axis, now.getTime());
  return marksFrom(from, to, stepFor(from, to, most, 7), zone)
    .map(({ at, words }) => ({ x: placeOn(axis, at.getTime()), words }))
    .map((week) => (nowX - week.x < 2.4 * px ? { ...week, words: "" } : week));
}

/** The life line in words: one sentence under the drawing, what stands beside each strip, and its figures. */
import type { LifeSpan, OrderPiece, PieceLife } from "../../api/shapes-orders";
import { date, daysBetween } from "../../domain/clock";
import { count, span as gone } from "../../domain/format";
import { barOf } from "./life-geometry";
import type { Around } from "./order-words";

const STATES: Record<string, string> = {
  wants_model: "waits for its model", wants_mould: "waits for its mould", to_press: "to press", in_mould: "in mould", out: "out, to join", joined: "joined",
  drying: "drying", bone_dry: "bone dry", in_bisque: "in the bisque kiln", bisqued: "bisqued", glazed: "glazed", in_glaze: "in the glaze kiln",
  glaze_fired: "glaze fired", checked: "checked", packed: "packed", delivered: "delivered", scrapped: "scrapped", missing: "missing", let_go: "let go",
};

export function spanWords({ state, cover }: Pick<LifeSpan, "state" | "cover">): string {
  const words = STATES[state] ?? state.replaceAll("_", " ");
  if (state !== "drying") return words;
  return cover === "" || cover === "open" ? "drying open" : "drying covered";
}

const isWaiting = (span: LifeSpan): boolean => span.until_at === null && barOf(span) === "waiting" && span.state !== "packed" && span.state !== "checked";

/** `bisqued, waits 9 d` beside its strip. */
export function asideWords(life: PieceLife, piece: OrderPiece | undefined, now: Date): string {
  const last = life.spans.at(-1);
  if (!last) return piece?.state_words ?? "";
  const words = piece?.state_words ?? spanWords(last);
  return isWaiting(last) ? `${words}, waits ${gone(new Date(last.from_at), now)}` : words;
}

/** How many there are and which has stood longest without a step: waiting is shown, not hidden. */
export function lifeSentence(lives: readonly PieceLife[], now: Date): string {
  const ends = lives.map((life) => life.spans.at(-1));
  const lost = ends.filter((last) => last?.stage === "lost").length;
  const waits = lives.flatMap((life) => {
    const last = life.spans.at(-1);
    return last && isWaiting(last) ? [{ mark: life.mark, since: last.from_at, words: spanWords(last) }] : [];
  }).sort((one, other) => one.since.localeCompare(other.since));
  const [longest] = waits;
  const told = `${count(lives.length, "piece", "pieces")}${lost > 0 ? `, ${String(lost)} lost` : ""}`;
  if (!longest) return `${told}. None waits.`;
  return `${told}. ${longest.mark} has waited longest: ${longest.words} for ${gone(new Date(longest.since), now)}.`;
}

export interface LifeFigures {
  id: string;
  mark: string;
  spans: string[];
}

/** `in mould Mon 5 to Tue 6 Oct`: what a listener hears instead of the drawing. */
export function lifeFigures(lives: readonly PieceLife[], { now, zone }: Around): LifeFigures[] {
  return lives.map((life) => ({ id: life.id, mark: life.mark, spans: life.spans.map((span) => spanFigure(span, { now, zone })) }));
}

function spanFigure(span: LifeSpan, { now, zone }: Around): string {
  const [from, until] = [new Date(span.from_at), span.until_at === null ? null : new Date(span.until_at)];
  const words = spanWords(span);
  if (until === null) return span.stage === "lost" || span.stage === "delivered" ? `${words} ${date(from, now, zone)}` : `${words} since ${date(from, now, zone)}`;
  return daysBetween(from, until, zone) === 0 ? `${words} ${date(from, now, zone)}` : `${words} ${date(from, now, zone)} to ${date(until, now, zone)}`;
}

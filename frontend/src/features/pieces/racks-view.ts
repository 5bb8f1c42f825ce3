/** The racks as this phone knows them: every piece by its place, what nobody touched, and what a few letters find. */
import type { PieceBrief, PlaceRow } from "../../api/shapes-pieces";
import { unseenBy } from "../../offline/kept-act";
import type { KeptAct } from "../../offline/kept-act";
import { folded, wordsOf } from "../../domain/folded";
import { joinFacts, span, upperFirst } from "../../domain/format";
import { briefAfter, isAbout } from "./piece-overlay";

const DAY_MS = 24 * 60 * 60_000;
export const UNTOUCHED_DAYS = 7;
/** Ware that changes while nobody looks; what is fired can wait. */
const RAW_STAGES: ReadonlySet<string> = new Set(["pressing", "assembly", "drying"]);
const GONE_STAGES: ReadonlySet<string> = new Set(["delivered", "lost", "model", "mould"]);

export interface PlaceLine {
  id: string;
  name: string;
  count: number;
  /** `8 drying · 2 bone dry` */
  evidence: string;
}

/** Kept acts that the list cannot show yet, laid over its rows. */
export function overlaidPieces(pieces: readonly PieceBrief[], seq: number, acts: readonly KeptAct[]): PieceBrief[] {
  const unseen = unseenBy(seq, acts);
  if (unseen.length === 0) return [...pieces];
  return pieces.map((piece) => unseen.filter((act) => isAbout(act, piece.id)).reduce(briefAfter, piece));
}

/** What stands about in the studio: not delivered, lost or only planned. */
export function standingAbout(pieces: readonly PieceBrief[]): PieceBrief[] {
  return pieces.filter((piece) => !GONE_STAGES.has(piece.stage) && piece.state !== "to_press");
}

export function untouched(pieces: readonly PieceBrief[], now: Date): PieceBrief[] {
  const limit = now.getTime() - UNTOUCHED_DAYS * DAY_MS;
  return pieces
    .filter((piece) => RAW_STAGES.has(piece.stage) && Date.parse(piece.touched_at) <= limit)
    .sort((one, other) => Date.parse(one.touched_at) - Date.parse(other.touched_at));
}

/** `8 drying · 2 bone dry · 1 bisqued`, the most first. */
export function countsOf(pieces: readonly PieceBrief[]): string {
  const counts = new Map<string, number>();
  for (const { state, state_words } of pieces) {
    const words = state === "drying" ? "drying" : state_words;
    counts.set(words, (counts.get(words) ?? 0) + 1);
  }
  const most = [...counts].sort(([, one], [, other]) => other - one);
  return joinFacts(...most.map(([words, count]) => `${String(count)} ${words}`));
}

/** Places that hold something, in the studio's order; what has no place comes last. */
export function placeLines(pieces: readonly PieceBrief[], places: readonly PlaceRow[]): PlaceLine[] {
  const order = new Map(places.map((place, at) => [place.id, at]));
  const byPlace = new Map<string, PieceBrief[]>();
  for (const piece of pieces) {
    const id = piece.place?.id ?? "";
    byPlace.set(id, [...(byPlace.get(id) ?? []), piece]);
  }
  return [...byPlace]
    .map(([id, held]) => ({ id: id || "none", name: held[0]?.place?.name ?? "No place said", count: held.length, evidence: countsOf(held) }))
    .sort((one, other) => (order.get(one.id) ?? Infinity) - (order.get(other.id) ?? Infinity) || one.name.localeCompare(other.name));
}

/** Every word must be found in the mark, the noun, the design, the maker, the place or the state; accents and case make no difference. */
export function findPieces(pieces: readonly PieceBrief[], letters: string): PieceBrief[] {
  const words = wordsOf(letters);
  const textOf = ({ mark, noun, design_name, maker, place, state_words }: PieceBrief): string =>
    folded([mark, noun, design_name, maker?.first_name, maker?.initials, place?.name, state_words].join("\n"));
  const found = pieces.filter((piece) => words.every((word) => textOf(piece).includes(word)));
  // The mark that was typed in full stands first.
  const isNamed = (piece: PieceBrief): number => Number(folded(piece.mark) === words.join(" "));
  return found.sort((one, other) => isNamed(other) - isNamed(one));
}

export interface PieceLineWords {
  verdict: string;
  evidence: string;
  spoken: string;
}

export function pieceLineWords(piece: PieceBrief, now: Date, { isPlaced = true, isTouch = false } = {}): PieceLineWords {
  const verdict = piece.clash_id !== null ? "Two stories" : piece.is_damaged ? "Damaged, decide" : upperFirst(piece.state_words);
  const gone = isTouch ? `not touched ${span(new Date(piece.touched_at), now)}` : span(new Date(piece.since_at), now);
  const evidence = joinFacts(gone, isPlaced && (piece.place?.name ?? "no place said"), piece.maker?.first_name);
  return { verdict, evidence, spoken: `${piece.mark}, ${piece.noun}, ${verdict.toLowerCase()}. ${evidence.replaceAll(" · ", ", ")}` };
}

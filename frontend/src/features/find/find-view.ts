/** What was found, by kind: the pieces from the phone's own copy, the rest as the studio answers. */
import type { FindAnswer, Hit } from "../../api/shapes-find";
import type { PieceBrief } from "../../api/shapes-pieces";
import { wordsOf } from "../../domain/folded";
import { findPieces, pieceLineWords } from "../pieces/racks-view";

export interface FoundLine {
  id: string;
  name: string;
  noun?: string;
  verdict: string;
  evidence?: string;
  spoken: string;
  href: string;
}

export interface FoundKind {
  name: string;
  /** How many there are; null where only the first of them are known. */
  count: number | null;
  lines: FoundLine[];
}

/** As many of one kind as a person reads through; more letters find the rest. */
const MOST_LINES = 20;

const KINDS: readonly { kind: Exclude<Hit["kind"], "piece">; name: string; href: (id: string) => string }[] = [
  { kind: "order", name: "Orders", href: (id) => `/orders/${id}` },
  { kind: "mould", name: "Moulds", href: (id) => `/moulds/${id}` },
  { kind: "load", name: "Loads", href: (id) => `/loads/${id}` },
  { kind: "place", name: "Places", href: (id) => `/racks/${id}` },
  { kind: "person", name: "People", href: () => "/people" },
  { kind: "found", name: "Found ware", href: (id) => `/found/${id}` },
];

/** The path under the studio that asks for these letters; null while none were typed. */
export function askedPath(letters: string): string | null {
  const words = wordsOf(letters);
  return words.length > 0 ? `search/?q=${encodeURIComponent(words.join(" ").slice(0, 60))}` : null;
}

function pieceLine(piece: PieceBrief, now: Date): FoundLine {
  return { id: piece.id, name: piece.mark, noun: piece.noun, href: `/pieces/${piece.id}`, ...pieceLineWords(piece, now) };
}

function hitLine(hit: Hit, href: string): FoundLine {
  const [verdict = "", ...rest] = hit.words.split(" · ");
  return { id: hit.id, name: hit.name, verdict, ...(rest.length > 0 ? { evidence: rest.join(" · ") } : {}), spoken: `${hit.name}: ${hit.words.replaceAll(" · ", ", ")}`, href };
}

/** Kinds in which something of that very name was found stand first, then pieces, then the rest. */
export function foundKinds(letters: string, pieces: readonly PieceBrief[] | null, answer: FindAnswer | null, now: Date): FoundKind[] {
  const hits = answer?.results ?? [];
  const own = pieces === null ? null : findPieces(pieces, letters);
  const heard = hits.filter((hit) => hit.kind === "piece");
  const known: FoundKind = own === null
    ? { name: "Pieces", count: answer?.is_cut ? null : heard.length, lines: heard.map((hit) => hitLine(hit, `/pieces/${hit.id}`)) }
    : { name: "Pieces", count: own.length, lines: own.slice(0, MOST_LINES).map((piece) => pieceLine(piece, now)) };
  const others = KINDS.map(({ kind, name, href }): FoundKind & { isNamed: boolean } => {
    const ofKind = hits.filter((hit) => hit.kind === kind);
    return { name, count: answer?.is_cut ? null : ofKind.length, lines: ofKind.slice(0, MOST_LINES).map((hit) => hitLine(hit, href(hit.id))), isNamed: ofKind.some((hit) => hit.is_exact) };
  });
  const named = others.filter((one) => one.isNamed);
  return [...named, known, ...others.filter((one) => !one.isNamed)].filter((one) => one.lines.length > 0).map(({ name, count, lines }) => ({ name, count, lines }));
}

/** The piece in words: where it stands, its parts, and its story. */
import type { DryingAnswer, PartWhole, PieceAnswer, Telling } from "../../api/shapes-pieces";
import { clock, date, day } from "../../domain/clock";
import { joinFacts, span, upperFirst } from "../../domain/format";
import { likely } from "./drying-words";
import { COVERS, onWords } from "./stage";

export interface When {
  now: Date;
  zone: string;
}

/** The large word and what it rests on. A drying piece says how far it is; any other where it is. */
export function standing({ piece }: PieceAnswer, drying: DryingAnswer | null, { now }: When): { verdict: string; evidence: string } {
  const since = `${piece.state_words} ${span(new Date(piece.since_at), now)}`;
  const isDrying = piece.state === "drying" && drying !== null && drying.curve !== null;
  const verdict = isDrying ? drying.verdict : upperFirst(piece.state_words);
  const gone = isDrying ? since : span(new Date(piece.since_at), now);
  return { verdict, evidence: joinFacts(gone, piece.place?.name ?? "no place said", onWords(piece.stands_on), piece.maker?.first_name) };
}

/** `jar, lid L06 is bone dry` */
export function titleNote({ piece, partners }: PieceAnswer): string {
  const other = partners[0];
  return other ? `${piece.noun}, ${other.noun} ${other.mark} is ${other.state_words}` : piece.noun;
}

const PART_WORDS: Record<PartWhole["state"], string> = {
  to_press: "to press", in_mould: "in mould", out: "out", joined: "joined", scrapped: "scrapped", replaced: "replaced",
};

export interface PartWords {
  key: string;
  role: string;
  words: string;
  mould: string;
  setId: string | null;
}

/** How long a part has been out matters only until it is joined and set to dry. */
/** How a part stands that is covered otherwise than its piece. */
function ownCover({ cover }: PartWhole): string {
  const words = COVERS.find((one) => one.value === cover)?.words.toLowerCase();
  return words === undefined ? "" : `, ${words}`;
}

export function partWords(part: PartWhole, { now }: When, isMade = false): PartWords {
  const at = { to_press: null, in_mould: part.pressed_at, out: part.out_at, joined: part.joined_at, scrapped: part.ended_at, replaced: part.ended_at }[part.state];
  const gone = at && (part.state === "in_mould" || part.state === "out") ? ` ${span(new Date(at), now)}` : "";
  return {
    key: part.id,
    role: part.role,
    words: `${isMade && part.state === "out" ? "Out of its mould" : upperFirst(`${PART_WORDS[part.state]}${gone}`)}${ownCover(part)}`,
    mould: joinFacts(part.mould && `${part.mould.label}, generation ${String(part.mould.generation)}`, part.slab_block && `block ${part.slab_block.label}`),
    setId: part.mould?.set_id ?? null,
  };
}

/** What a piece waits for, by windows where there are any. A room that never gets it there gives no day. */
export function coming({ piece }: PieceAnswer, drying: DryingAnswer | null, { now, zone }: When): { label: string; value: string; note: string } | null {
  const windows = drying?.windows;
  if (!drying || !windows) return null;
  const guess = drying.confidence.basis === "guess" ? "studio guess" : `from ${String(drying.confidence.checks)} of your checks`;
  if (piece.state === "in_mould") {
    const value = likely(windows.demould.opens, now, zone);
    return value ? { label: "likely out", value, note: guess } : null;
  }
  if (piece.state === "out") {
    const opens = likely(windows.join.opens, now, zone);
    return opens ? { label: "likely to join", value: opens, note: guess } : null;
  }
  if (piece.state !== "drying") return null;
  if (drying.unreachable.includes("bisque")) return { label: "likely dry", value: "Not in this room", note: "A warm cupboard or a long warm hold gets it there." };
  const value = likely(windows.bisque, now, zone);
  return value ? { label: "likely dry", value, note: `4 in 5 chance; ${guess}` } : null;
}

export function livingParts({ parts }: PieceAnswer): PartWhole[] {
  return parts.filter((part) => part.state !== "scrapped" && part.state !== "replaced");
}

export interface StoryLine {
  id: string;
  /** `today`, `Sun 18` */
  day: string;
  clock: string;
  words: string;
  who: string;
  /** `written Mon 19, 08:05`, only where that differs. */
  written: string | null;
  note: string | null;
  photoIds: readonly string[];
  /** `taken back by Bram`, or `not so, settled by Bram`: then it is struck through. */
  gone: string | null;
  memberId: string;
}

function goneWords({ is_taken_back, taken_back_by, left_out_by }: Telling): string | null {
  if (is_taken_back) return taken_back_by ? `taken back by ${taken_back_by.first_name}` : "taken back";
  return left_out_by ? `not so, settled by ${left_out_by.first_name}` : null;
}

export function storyLine(telling: Telling, { now, zone }: When): StoryLine {
  const [happened, written] = [new Date(telling.happened_at), new Date(telling.written_at)];
  return {
    id: telling.id,
    day: day(happened, now, zone),
    clock: clock(happened, zone),
    words: telling.is_also_said ? `Also said: ${telling.words}` : upperFirst(telling.words),
    who: joinFacts(telling.member.first_name, telling.device),
    written: telling.is_late ? `written ${date(written, now, zone)}, ${clock(written, zone)}` : null,
    note: telling.note,
    photoIds: telling.photo_ids,
    gone: goneWords(telling),
    memberId: telling.member.id,
  };
}

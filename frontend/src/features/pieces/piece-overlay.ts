/** A piece as this phone knows it: what the studio last said, with what was done here since laid over it. */
import type { CoverState, PieceAnswer, PieceBrief } from "../../api/shapes-pieces";
import { unseenBy } from "../../offline/kept-act";
import type { KeptAct } from "../../offline/kept-act";
import { COVERS, onOf } from "./stage";

export interface KeptTelling {
  id: string;
  words: string;
  at: Date;
  isKept: boolean;
  photoIds: string[];
}

export interface PieceView {
  answer: PieceAnswer;
  /** Newest first, as the story is. */
  kept: KeptTelling[];
  /** Covered or opened here, which the studio has not reckoned with yet. */
  isCovered: boolean;
}

function happenedAt(act: KeptAct): string {
  const at = act.body["happened_at"];
  return typeof at === "string" ? at : act.made_at;
}

function withPart(answer: PieceAnswer, id: string | undefined, state: "out"): PieceAnswer {
  return { ...answer, parts: answer.parts.map((part) => (part.id === id ? { ...part, state } : part)) };
}

function isCover(state: string | undefined): state is CoverState {
  return COVERS.some((cover) => cover.value === state);
}

function covered<Brief extends PieceBrief>(piece: Brief, act: KeptAct): Brief {
  const state = act.about["state"];
  if (!isCover(state)) return piece;
  if (act.about["part_ids"] !== undefined) return dries(piece, act);
  const words = COVERS.find((cover) => cover.value === state)?.drying ?? "";
  return { ...piece, cover: state, stage: "drying", state: "drying", state_words: words, since_at: piece.state === "drying" ? piece.since_at : happenedAt(act) };
}

/** A part of a joined piece that is covered by itself sets the piece to dry, and leaves its own cover unsaid. */
function dries<Brief extends PieceBrief>(piece: Brief, act: KeptAct): Brief {
  return piece.state === "joined" ? { ...piece, stage: "drying", state: "drying", state_words: "drying", since_at: happenedAt(act) } : piece;
}

/** The parts named stand otherwise than the piece; a cover of the whole ends that. */
function partsCovered({ parts }: PieceAnswer, { about }: KeptAct): PieceAnswer["parts"] {
  const named = about["part_ids"]?.split(" ") ?? [];
  const whole = named.length === 0;
  return parts.map((part) => (whole ? { ...part, cover: "" } : named.includes(part.id) ? { ...part, cover: about["state"] ?? "" } : part));
}

/** What one act makes of the row of a piece. */
export function briefAfter<Brief extends PieceBrief>(piece: Brief, act: KeptAct): Brief {
  const { about } = act;
  switch (act.verb) {
    case "joined":
      return { ...piece, stage: "assembly", state: "joined", state_words: "joined", since_at: happenedAt(act) };
    case "stage_set":
    case "scrapped":
      return { ...piece, stage: about["stage"] ?? "", state: about["state"] ?? "", state_words: about["state_words"] ?? "", since_at: happenedAt(act) };
    case "covered":
      return covered(piece, act);
    case "cracked":
      return { ...piece, is_damaged: true };
    case "moved":
      return { ...piece, place: { id: about["place_id"] ?? "", name: about["place_name"] ?? "" } };
    default:
      return piece;
  }
}

/** All living parts out: the piece is out of its moulds too. */
function outOfMoulds(answer: PieceAnswer, act: KeptAct): PieceAnswer {
  const isIn = answer.parts.some((part) => part.state === "in_mould" || part.state === "to_press");
  if (isIn || answer.piece.state !== "in_mould") return answer;
  return { ...answer, piece: { ...answer.piece, stage: "assembly", state: "out", state_words: "out", since_at: happenedAt(act) } };
}

function after(answer: PieceAnswer, act: KeptAct): PieceAnswer {
  if (act.verb === "demoulded") return outOfMoulds(withPart(answer, act.about["part_id"], "out"), act);
  const joined = act.verb === "joined" ? answer.parts.map((part) => (part.state === "out" ? { ...part, state: "joined" as const } : part)) : answer.parts;
  if (act.verb === "covered") return { ...answer, parts: partsCovered(answer, act), piece: briefAfter(answer.piece, act) };
  if (act.verb === "moved") return { ...answer, piece: { ...briefAfter(answer.piece, act), stands_on: onOf(act.about["stands_on"]) } };
  return { ...answer, parts: joined, piece: briefAfter(answer.piece, act) };
}

function photosOf({ body }: KeptAct): string[] {
  const ids = body["photo_ids"];
  return Array.isArray(ids) ? ids.filter((id) => typeof id === "string") : [];
}

export const isAbout = (act: KeptAct, pieceId: string): boolean => act.about["piece_id"] === pieceId || (act.about["piece_ids"] ?? "").split(" ").includes(pieceId);

export function pieceView(snapshot: PieceAnswer, acts: readonly KeptAct[]): PieceView {
  const told = new Set(snapshot.story.map((telling) => telling.id));
  const mine = unseenBy(snapshot.journal_seq, acts).filter((act) => isAbout(act, snapshot.piece.id) || told.has(act.about["corrects"] ?? ""));
  const takenBack = new Set(mine.filter((act) => act.verb === "retracted").map((act) => act.about["corrects"]));
  const story = snapshot.story.map((telling) => (takenBack.has(telling.id) ? { ...telling, is_taken_back: true } : telling));
  const kept = mine.map((act) => ({ id: act.id, words: act.words, at: new Date(happenedAt(act)), isKept: act.state === "waiting", photoIds: photosOf(act) })).reverse();
  const photo_ids = [...new Set([...kept.flatMap((telling) => telling.photoIds), ...snapshot.photo_ids])];
  return { answer: { ...mine.reduce(after, snapshot), story, photo_ids }, kept, isCovered: mine.some((act) => act.verb === "covered" && !takenBack.has(act.id)) };
}

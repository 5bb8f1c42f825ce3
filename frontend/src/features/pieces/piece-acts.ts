/** The acts on one piece: where each is posted, what it carries, and what it is called afterwards. */
import type { CoverState, Feel, PartWhole, PieceAnswer, Spot } from "../../api/shapes-pieces";
import { mass, upperFirst } from "../../domain/format";
import type { Units } from "../../domain/format";
import { quantity } from "../../domain/typed";
import type { JsonObject } from "../../offline/kept-act";
import type { TakenPhoto } from "../common/taken-photo";
import type { ScreenAct } from "../common/use-outbox";
import type { CoverStep } from "./covering-words";
import { feelWords } from "./drying-words";
import { COVERS, onWords } from "./stage";
import type { StandsOn } from "./stage";

export type Draft = Omit<ScreenAct, "basedOn" | "words"> & { said: string };

export const CATCHING_UP = "catching_up";

export function weighing(pieceId: string, typed: string, units: Units): Draft {
  const value = quantity(typed, units.mass, "g");
  const said = typeof value === "number" ? mass(value, units) : value;
  return { path: `pieces/${pieceId}/weighings/`, fields: { mass_g: value }, verb: "weighed", about: { piece_id: pieceId }, said: `Weighed ${said}` };
}

export function cover(pieceId: string, state: CoverState): Draft {
  const word = COVERS.find((one) => one.value === state)?.words ?? state;
  const said = state === "open" ? "Uncovered" : state === "loose" ? "Covered loosely" : word;
  return { path: `pieces/${pieceId}/covers/`, fields: { state }, verb: "covered", about: { piece_id: pieceId, state }, said };
}

/** The cover that is advised next: of the parts it names, or of the whole piece. */
export function coverStep(pieceId: string, { cover: state, part_ids, words }: CoverStep): Draft {
  const fields: JsonObject = { state, ...(part_ids.length > 0 ? { part_ids } : {}) };
  const about = { piece_id: pieceId, state, ...(part_ids.length > 0 ? { part_ids: part_ids.join(" ") } : {}) };
  return { path: `pieces/${pieceId}/covers/`, fields, verb: "covered", about, said: `Done: ${words}` };
}

export function check(pieceId: string, feel: Feel, part: PartWhole | null): Draft {
  const fields: JsonObject = part ? { feel, part_id: part.id } : { feel };
  const about = { piece_id: pieceId, feel };
  if (feel === "fine") return { path: `pieces/${pieceId}/checks/`, fields, verb: "checked", about, said: feelWords(feel) };
  return { path: `pieces/${pieceId}/checks/`, fields, verb: "checked", about, said: `${part ? `${part.role} feels` : "Feels"} ${feelWords(feel).toLowerCase()}` };
}

export function move(pieceId: string, place: { id: string; name: string }): Draft {
  const about = { piece_id: pieceId, place_id: place.id, place_name: place.name };
  return { path: `pieces/${pieceId}/moves/`, fields: { place_id: place.id }, verb: "moved", about, said: `To ${place.name}` };
}

/** What it stands on where it is: told as put there again, so that it holds until it is put elsewhere. */
export function standOn(pieceId: string, place: { id: string; name: string }, on: StandsOn): Draft {
  const { path, fields, verb, about } = move(pieceId, place);
  return { path, fields: { ...fields, stands_on: on }, verb, about: { ...about, stands_on: on }, said: upperFirst(onWords(on)) };
}

const PART_SAID = { demoulded: "out", not_yet: "not yet", stuck: "stuck" } as const;

export function partEvent(pieceId: string, part: PartWhole, kind: keyof typeof PART_SAID): Draft {
  const about = { piece_id: pieceId, part_id: part.id };
  return { path: `parts/${part.id}/events/`, fields: { kind }, verb: kind, about, said: `${part.role} ${PART_SAID[kind]}` };
}

/** Anybody may say so, of anybody's piece; the maker decides what becomes of it. */
export function damage(pieceId: string, part: PartWhole, cause: string, photos: readonly TakenPhoto[]): Draft {
  const about = { piece_id: pieceId, part_id: part.id };
  return { path: `parts/${part.id}/events/`, fields: { kind: "cracked", cause }, photos, verb: "cracked", about, said: `${part.role} cracked` };
}

export interface Visit {
  reason?: string;
  grade?: "first" | "second";
  /** What it was dipped in. */
  glaze?: { id: string; label: string };
}

/** `joined` has a verb of its own, since the bench knows it by that. */
export function visit(pieceId: string, spot: Spot & { act?: string }, { reason, grade, glaze }: Visit = {}): Draft {
  const fields: JsonObject = { stage: spot.stage, state: spot.state, ...(reason ? { reason } : {}), ...(grade ? { grade } : {}), ...(glaze ? { glaze_batch_id: glaze.id } : {}) };
  const about = { piece_id: pieceId, stage: spot.stage, state: spot.state, state_words: spot.words };
  const second = grade === "second" ? ", second" : glaze ? ` in ${glaze.label}` : "";
  const said = spot.state === "bone_dry" ? "Called dry" : `${(spot.act ?? spot.words).charAt(0).toUpperCase()}${(spot.act ?? spot.words).slice(1)}${second}`;
  return { path: `pieces/${pieceId}/stage-events/`, fields, verb: spot.state === "joined" ? "joined" : "stage_set", about, said };
}

/** Nothing else is said of it. */
export function photograph(pieceId: string, photos: readonly TakenPhoto[]): Draft {
  return { path: `pieces/${pieceId}/photos/`, fields: {}, photos, verb: "photographed", about: { piece_id: pieceId }, said: photos.length > 1 ? "Photographs" : "Photograph" };
}

export const ENDS = [
  { value: "scrapped", words: "Scrapped" },
  { value: "missing", words: "Missing" },
  { value: "let_go", words: "Let go" },
] as const;

export const CAUSES = ["cracked", "warped", "broken", "stuck in mould", "burst", "glaze fault", "colour fault", "too small"] as const;

export interface Loss {
  state: (typeof ENDS)[number]["value"];
  cause: string;
  partId: string | null;
  isGuess: boolean;
  reclaim: "none" | "plain" | "mixed" | null;
  photos: TakenPhoto[];
}

export function loss(pieceId: string, { state, cause, partId, isGuess, reclaim, photos }: Loss): Draft {
  const words = ENDS.find((end) => end.value === state)?.words ?? state;
  const fields: JsonObject = {
    stage: "lost", state, cause, cause_is_guess: isGuess, ...(partId ? { part_id: partId } : {}), ...(reclaim ? { reclaim } : {}),
  };
  const about = { piece_id: pieceId, stage: "lost", state, state_words: words.toLowerCase() };
  return { path: `pieces/${pieceId}/stage-events/`, fields, photos, verb: "scrapped", about, said: cause ? `${words}: ${cause}` : words };
}

export const BACK_REASONS = ["damp on the shelf", "wetted again", "stripped and washed", "second glaze firing", "not fired through", "entered wrongly"] as const;

/** What this person may do to the piece; the server decides, this only spares them a no. */
export interface May {
  move: boolean;
  photo: boolean;
  report: boolean;
  check: boolean;
  cover: boolean;
  advance: boolean;
  scrap: boolean;
  isHelper: boolean;
}

export function mayDo({ piece }: PieceAnswer, grants: readonly string[], roles: readonly string[]): May {
  const isOwn = piece.mine || roles.includes("owner");
  const own = (grant: string): boolean => isOwn && grants.includes(grant);
  return {
    move: grants.includes("move_place"),
    photo: grants.includes("add_photo"),
    report: grants.includes("report_damage"),
    check: own("check_own"),
    cover: own("cover_own"),
    advance: own("advance_own") || grants.includes("advance_any"),
    scrap: own("scrap_own"),
    isHelper: !grants.includes("scrap_own"),
  };
}

/** What a press makes: which pieces the parts are for, and the act that says so. Pure. */
import { clock } from "../../domain/clock";
import type { MouldSetAnswer } from "../../api/shapes-moulds";
import type { PieceBrief } from "../../api/shapes-pieces";
import type { JsonObject, KeptAct } from "../../offline/kept-act";

/** Two presses of one mould so soon after one another are taken for one: a thumb bounces, clay does not. */
export const BOUNCE_MS = 10_000;
/** Up to then a press may be meant again or told twice, so *another 12?* is asked. Common practice, no source. */
export const AGAIN_MS = 300_000;

export interface Target {
  pieceId: string | null;
  mark: string;
}

const OPEN_STATES: ReadonlySet<string> = new Set(["wants_model", "wants_mould", "to_press", "in_mould", "out"]);

/** Pieces that wait for a part like this one, those that have something already first, then by their marks. */
export function waitingFor(pieces: readonly PieceBrief[], makes: MouldSetAnswer["makes"]): PieceBrief[] {
  const begun = (piece: PieceBrief): number => (piece.state === "in_mould" || piece.state === "out" ? 0 : 1);
  return pieces
    .filter((piece) => piece.design_id === makes.design_id && piece.mine && OPEN_STATES.has(piece.state) && piece.missing_roles.includes(makes.role))
    .sort((one, other) => begun(one) - begun(other) || one.mark.localeCompare(other.mark, "en", { numeric: true }));
}

/** Pieces named by acts that still wait: a piece is not pressed twice because the studio has not heard yet. */
export function withoutPressed(pieces: readonly PieceBrief[], acts: readonly KeptAct[], role: string): PieceBrief[] {
  const pressed = new Set(acts.filter((act) => act.verb === "pressed" && act.about["role"] === role && act.state !== "parked").flatMap((act) => (act.about["piece_ids"] ?? "").split(" ")));
  return pieces.filter((piece) => !pressed.has(piece.id));
}

/** The waiting pieces from the chosen one on, then new marks. Fewer than `count` when the marks run out. */
export function targetsOf(waiting: readonly PieceBrief[], chosenId: string | null, marks: readonly string[], count: number): Target[] {
  const first = waiting.findIndex((piece) => piece.id === chosenId);
  const old = first < 0 ? [] : waiting.slice(first).map((piece) => ({ pieceId: piece.id, mark: piece.mark }));
  return [...old, ...marks.map((mark) => ({ pieceId: null, mark }))].slice(0, count);
}

export interface Made {
  partId: string;
  pieceId: string;
  mark: string;
  isNew: boolean;
}

export interface Pressing {
  castingId: string;
  mouldPartIds: readonly string[];
  slabBlockId: string | null;
  role: string;
  designId: string;
}

export function pressingFields({ castingId, mouldPartIds, slabBlockId, role, designId }: Pressing, made: readonly Made[]): JsonObject {
  return {
    casting_id: castingId,
    mould_part_ids: [...mouldPartIds],
    count: made.length,
    ...(slabBlockId ? { slab_block_id: slabBlockId } : {}),
    parts: made.map(({ partId, pieceId, mark, isNew }) => ({ id: partId, role, piece: isNew ? { id: pieceId, mark, design_id: designId } : { id: pieceId } })),
  };
}

/** A press of this mould on this phone not long ago: what another one is asked against before it is sent. */
export interface Before {
  marks: string;
  count: number;
  at: Date;
  /** So soon that it is more likely one tap told twice than a second press. */
  isBounce: boolean;
}

/** What this phone last pressed in a mould, kept beside the outbox, which forgets what the studio has heard. */
export interface LastPress {
  id: string;
  marks: string;
  count: number;
  at: Date;
}

export function pressBefore(acts: readonly KeptAct[], remembered: LastPress | null, setId: string, now: number): Before | null {
  const gone = new Set(acts.filter((act) => act.verb === "retracted").map((act) => act.body["corrects"]));
  const kept = acts.filter((act) => act.verb === "pressed" && act.about["set_id"] === setId && act.state !== "parked" && !gone.has(act.id)).map(pressOf).at(-1);
  const isNotTaken = acts.some((act) => act.id === remembered?.id && act.state === "parked");
  const last = kept ?? (remembered === null || gone.has(remembered.id) || isNotTaken ? null : remembered);
  if (last === null) return null;
  const age_ms = now - last.at.getTime();
  return age_ms < AGAIN_MS ? { marks: last.marks, count: last.count, at: last.at, isBounce: age_ms < BOUNCE_MS } : null;
}

function pressOf({ id, about, body, made_at }: KeptAct): LastPress {
  return { id, marks: about["marks"] ?? "", count: Number(body["count"] ?? 1), at: new Date(made_at) };
}

/** Why a press is asked about: the first twelve by name or by number, and how long ago. */
export function askedWords({ count: before, at, isBounce }: Before, label: string, wanted: number, zone: string): string {
  const was = before === 1 ? "was" : "were";
  return `${was} pressed in ${label} ${isBounce ? "just now" : `at ${clock(at, zone)}`}. Another${wanted === 1 ? "" : ` ${String(wanted)}`}?`;
}

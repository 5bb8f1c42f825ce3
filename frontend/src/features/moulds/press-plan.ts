/** What a press makes: which pieces the parts are for, and the act that says so. Pure. */
import type { MouldSetAnswer } from "../../api/shapes-moulds";
import type { PieceBrief } from "../../api/shapes-pieces";
import type { JsonObject, KeptAct } from "../../offline/kept-act";

/** Two presses of one mould so soon after one another are asked about: a thumb bounces, clay does not. */
export const BOUNCE_MS = 10_000;

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

/** The press of this mould on this phone a few seconds ago, if there was one. */
export function bounceOf(acts: readonly KeptAct[], setId: string, now: number): KeptAct | null {
  const gone = new Set(acts.filter((act) => act.verb === "retracted").map((act) => act.body["corrects"]));
  const last = acts.filter((act) => act.verb === "pressed" && act.about["set_id"] === setId && act.state !== "parked" && !gone.has(act.id)).at(-1);
  return last && now - Date.parse(last.made_at) < BOUNCE_MS ? last : null;
}

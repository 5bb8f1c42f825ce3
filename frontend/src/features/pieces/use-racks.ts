import { useState } from "preact/hooks";
import type { CoverState, PieceBrief, PieceList, PlaceRow } from "../../api/shapes-pieces";
import { useSession } from "../common/session";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useKeptActs } from "../common/use-outbox";
import { useWholeList } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import { count } from "../../domain/format";
import { overlaidPieces, standingAbout } from "./racks-view";
import { COVERS } from "./stage";
import { usePlaces } from "./use-places";

export interface Racks {
  pieces: PieceBrief[];
  places: readonly PlaceRow[];
  seq: number;
}

/** Every piece that stands about, with what was done here laid over it. */
export function useRacks(): Screen<Racks> & { again: () => void } {
  const screen = useWholeList<PieceList>("pieces/");
  const acts = useKeptActs();
  const places = usePlaces();
  if (screen.state !== "ready") return screen;
  const { results, journal_seq } = screen.value;
  return { ...screen, value: { pieces: standingAbout(overlaidPieces(results, journal_seq, acts)), places, seq: journal_seq } };
}

export type Many = "move" | "cover" | null;

export interface Shelf {
  many: Many;
  /** Those the act is for; a tap leaves one out or takes it in again. */
  ticked: ReadonlySet<string>;
  isAsking: boolean;
  saying: Saying;
  mayCover: (piece: PieceBrief) => boolean;
  begin: (many: Many) => void;
  toggle: (id: string) => void;
  /** The pieces are right: now where to, or how covered. */
  ask: () => void;
  moveTo: (place: { id: string; name: string }) => void;
  cover: (state: CoverState) => void;
}

const COVERABLE: ReadonlySet<string> = new Set(["out", "joined", "drying"]);

export function useShelf(pieces: readonly PieceBrief[], placeName: string, seq: number): Shelf {
  const { member } = useSession().membership;
  const saying = useSaid(seq);
  const [many, setMany] = useState<Many>(null);
  const [ticked, tick] = useState<ReadonlySet<string>>(new Set());
  const [isAsking, setAsking] = useState(false);
  const isOwner = member.roles.includes("owner");
  const mayCover = (piece: PieceBrief): boolean => COVERABLE.has(piece.state) && member.grants.includes("cover_own") && (piece.mine || isOwner);

  const begin = (next: Many): void => {
    setMany(next);
    setAsking(false);
    tick(new Set(pieces.filter((piece) => next === "move" || mayCover(piece)).map((piece) => piece.id)));
  };
  const toggle = (id: string): void => {
    const next = new Set(ticked);
    if (!next.delete(id)) next.add(id);
    tick(next);
  };
  const send = (kind: "move" | "cover", fields: Record<string, string>, about: Record<string, string>, said: string): void => {
    const all = pieces.map((piece) => piece.id);
    const ids = all.filter((id) => ticked.has(id));
    const left = kind === "move" ? all.filter((id) => !ticked.has(id)) : [];
    void saying.say({
      path: "bulk/", fields: { kind, ids: [...ids, ...left], except_ids: left, ...fields }, basedOn: seq,
      verb: kind === "move" ? "moved" : "covered", about: { piece_ids: ids.join(" "), ...about }, words: `${placeName}: ${said}`,
    }, said);
    begin(null);
  };
  const figure = count(ticked.size, "piece", "pieces");
  return {
    many, ticked, isAsking, saying, mayCover, begin, toggle,
    ask: () => { setAsking(true); },
    moveTo: (place) => { send("move", { place_id: place.id }, { place_id: place.id, place_name: place.name }, `${figure} to ${place.name}`); },
    cover: (state) => { send("cover", { cover: state }, { state }, `${figure}: ${COVERS.find((one) => one.value === state)?.words.toLowerCase() ?? state}`); },
  };
}

import { useState } from "preact/hooks";
import { API } from "../../api/client";
import type { Page } from "../../api/pages";
import type { CoverState, DryingAnswer, DryingSum, DryingSumAsked, PlaceRow } from "../../api/shapes-pieces";
import type { ReadingRow } from "../../api/shapes-studio";
import { quantity } from "../../domain/typed";
import { useSession } from "../common/session";
import { useClaim } from "../common/use-claim";
import type { Claim } from "../common/use-claim";
import { useScreen } from "../common/use-screen";
import { usePlaces } from "./use-places";
import { askedOf, ASSUMED_AIR, knownOf } from "./what-if-asked";
import type { Change, Clay, Known, RoomAirNow, SectionShape } from "./what-if-asked";

export interface Reckoned {
  asItIs: DryingSum;
  changed: DryingSum;
}

export interface WhatIf {
  known: Known;
  setClay: (clay: Clay) => void;
  setShape: (shape: SectionShape) => void;
  rooms: readonly PlaceRow[];
  /** Where it stands, and where it would be put. */
  here: RoomChoice;
  there: RoomChoice;
  cover: CoverState | null;
  setCover: (cover: CoverState) => void;
  thickness: string;
  setThickness: (typed: string) => void;
  claim: Claim;
  reckoned: Reckoned | null;
  reckon: (now: Date) => Promise<void>;
}

export interface RoomChoice {
  id: string;
  choose: (id: string) => void;
  /** Its last reading that is used; null where there is none, or no room is chosen. */
  air: RoomAirNow | null;
}

export function useWhatIf(drying: DryingAnswer | null, placeId: string | null, opened: Date): WhatIf {
  const { units } = useSession().membership.member;
  const places = usePlaces();
  const rooms = places.filter(({ kind }) => kind === "room");
  const stands = standsIn(places, placeId);
  const [of, change] = useState<Partial<Known>>({});
  const own = { ...knownOf(drying, opened, stands.isInCupboard), ...of };
  const here = useRoomChoice(stands.room?.id ?? "");
  const there = useRoomChoice("");
  const [cover, setCover] = useState<CoverState | null>(null);
  const [thickness, setThickness] = useState("");
  const [reckoned, show] = useState<Reckoned | null>(null);
  const claim = useClaim();
  const ask = (asked: DryingSumAsked): Promise<DryingSum | null> => claim.claim<DryingSum>({ method: "POST", path: `${API}/sums/drying/`, body: asked });

  const reckon = async (now: Date): Promise<void> => {
    const air = here.air ?? ASSUMED_AIR;
    const typed = thickness.trim() === "" ? null : quantity(thickness, units.length, "mm");
    const wanted: Change = { air: there.id === "" ? null : there.air ?? ASSUMED_AIR, cover, thickest_mm: typed };
    const asItIs = await ask(askedOf(own, air, { air: null, cover: null, thickest_mm: null }, now));
    const changed = asItIs && await ask(askedOf(own, air, wanted, now));
    show(asItIs && changed ? { asItIs, changed } : null);
  };
  return {
    known: own, setClay: (clay) => { change({ ...of, clay }); }, setShape: (shape) => { change({ ...of, shape }); },
    rooms, here, there, cover, setCover, thickness, setThickness, claim, reckoned, reckon,
  };
}

function useRoomChoice(first: string): RoomChoice {
  const [chosen, choose] = useState<string | null>(null);
  const id = chosen ?? first;
  const screen = useScreen<Page<ReadingRow>>(id === "" ? "places/" : `places/${id}/readings/?use=used`);
  const rows = id !== "" && screen.state === "ready" ? screen.value.results : [];
  const air = rows.flatMap(({ air_c, humidity_fraction }) => (air_c != null && humidity_fraction != null ? [{ air_c, humidity_fraction }] : []))[0];
  return { id, choose, air: air ?? null };
}

/** The room a place stands in, or itself, and whether a cupboard's door is between. */
function standsIn(places: readonly PlaceRow[], id: string | null, left = 8): { room: PlaceRow | undefined; isInCupboard: boolean } {
  const place = places.find((one) => one.id === id);
  if (place === undefined || place.kind === "room" || left === 0) return { room: place, isInCupboard: false };
  const above = standsIn(places, place.air_from_id ?? place.parent_id, left - 1);
  return { room: above.room, isInCupboard: above.isInCupboard || place.kind === "cupboard" };
}

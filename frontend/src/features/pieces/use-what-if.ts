import { useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { CoverState, DryingSum, DryingSumAsked, PlaceRow } from "../../api/shapes-pieces";
import type { ReadingRow } from "../../api/shapes-studio";
import { quantity } from "../../domain/typed";
import { studioPath, useSession } from "../common/session";
import { useClaim } from "../common/use-claim";
import type { Claim } from "../common/use-claim";
import { useScreen } from "../common/use-screen";
import { usePlaces } from "./use-places";
import { askedOf, ASSUMED_AIR, knownOf, NO_CHANGE } from "./what-if-asked";
import type { Change, Clay, Known, RoomAirNow, SectionShape } from "./what-if-asked";
import type { IfSo } from "./what-if-dates";

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
  ifSo: IfSo | null;
  reckon: () => Promise<void>;
}

export interface RoomChoice {
  id: string;
  choose: (id: string) => void;
  /** Its last reading that is used; null where there is none, or no room is chosen. */
  air: RoomAirNow | null;
}

export function useWhatIf(opened: Date): WhatIf {
  const { studio, member: { units } } = useSession().membership;
  const rooms = usePlaces().filter(({ kind }) => kind === "room");
  const [of, change] = useState<Partial<Known>>({});
  const own = { ...knownOf(opened), ...of };
  const here = useRoomChoice();
  const there = useRoomChoice();
  const [cover, setCover] = useState<CoverState | null>(null);
  const [thickness, setThickness] = useState("");
  const [ifSo, show] = useState<IfSo | null>(null);
  const claim = useClaim();
  const ask = (asked: DryingSumAsked): Promise<DryingSum | null> => claim.claim<DryingSum>({ method: "POST", path: studioPath(studio.slug, "sums/drying/"), body: asked });

  const reckon = async (): Promise<void> => {
    const air = here.air ?? ASSUMED_AIR;
    const typed = thickness.trim() === "" ? null : quantity(thickness, units.length, "mm");
    const wanted: Change = { air: there.id === "" ? null : there.air ?? ASSUMED_AIR, cover, thickest_mm: typed };
    const asItIs = await ask({ ...askedOf(own, air, NO_CHANGE), ...placed(here.id) });
    const changed = asItIs && await ask({ ...askedOf(own, air, wanted), ...placed(there.id || here.id) });
    show(asItIs && changed ? ifSoOf(asItIs, changed) : null);
  };
  return {
    known: own, setClay: (clay) => { change({ ...of, clay }); }, setShape: (shape) => { change({ ...of, shape }); },
    rooms, here, there, cover, setCover, thickness, setThickness, claim, ifSo, reckon,
  };
}

function ifSoOf(asItIs: DryingSum, { begins_at, windows, curve, unreachable, confidence, warnings, rests_on, working, source }: DryingSum): IfSo {
  return { at: begins_at, asItIs: asItIs.windows, windows, curve, unreachable, confidence, warnings, restsOn: rests_on, working: [...working, source] };
}

const placed = (id: string): Pick<DryingSumAsked, "place_id"> => (id === "" ? {} : { place_id: id });

function useRoomChoice(): RoomChoice {
  const [id, choose] = useState("");
  const screen = useScreen<Page<ReadingRow>>(id === "" ? "places/" : `places/${id}/readings/?use=used`);
  const rows = id !== "" && screen.state === "ready" ? screen.value.results : [];
  const air = rows.flatMap(({ air_c, humidity_fraction }) => (air_c != null && humidity_fraction != null ? [{ air_c, humidity_fraction }] : []))[0];
  return { id, choose, air: air ?? null };
}

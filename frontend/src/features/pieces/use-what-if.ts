import { useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { DryingSum, DryingSumAsked, PlaceRow } from "../../api/shapes-pieces";
import type { ReadingRow } from "../../api/shapes-studio";
import { studioPath, useSession } from "../common/session";
import { useScreen } from "../common/use-screen";
import { usePlaces } from "./use-places";
import { askedOf, ASSUMED_AIR, knownOf, NO_CHANGE } from "./what-if-asked";
import type { Clay, Known, RoomAirNow, SectionShape } from "./what-if-asked";
import type { IfSo } from "./what-if-dates";
import { useChange } from "./what-if-form";
import type { TypedChange } from "./what-if-form";

export interface WhatIf {
  known: Known;
  setClay: (clay: Clay) => void;
  setShape: (shape: SectionShape) => void;
  rooms: readonly PlaceRow[];
  /** Where it stands, and where it would be put. */
  here: RoomChoice;
  there: RoomChoice;
  change: TypedChange;
  reckon: () => Promise<void>;
}

export interface RoomChoice {
  id: string;
  choose: (id: string) => void;
  /** Its last reading that is used; null where there is none, or no room is chosen. */
  air: RoomAirNow | null;
}

export function useWhatIf(opened: Date): WhatIf {
  const { studio } = useSession().membership;
  const rooms = usePlaces().filter(({ kind }) => kind === "room");
  const [of, tell] = useState<Partial<Known>>({});
  const own = { ...knownOf(opened), ...of };
  const here = useRoomChoice();
  const there = useRoomChoice();
  const change = useChange();
  const { cover, thickest_mm, claim, show } = change;
  const ask = (asked: DryingSumAsked): Promise<DryingSum | null> => claim.claim<DryingSum>({ method: "POST", path: studioPath(studio.slug, "sums/drying/"), body: asked });

  const reckon = async (): Promise<void> => {
    const air = here.air ?? ASSUMED_AIR;
    const wanted = { air: there.id === "" ? null : there.air ?? ASSUMED_AIR, cover, thickest_mm };
    const asItIs = await ask({ ...askedOf(own, air, NO_CHANGE), ...placed(here.id) });
    const changed = asItIs && await ask({ ...askedOf(own, air, wanted), ...placed(there.id || here.id) });
    show(asItIs && changed ? ifSoOf(asItIs, changed) : null);
  };
  return {
    known: own, setClay: (clay) => { tell({ ...of, clay }); }, setShape: (shape) => { tell({ ...of, shape }); },
    rooms, here, there, change, reckon,
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

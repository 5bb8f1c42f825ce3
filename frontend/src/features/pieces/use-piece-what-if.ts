import { useState } from "preact/hooks";
import type { CoverState, PlaceRow, Supposed, SupposedAsked } from "../../api/shapes-pieces";
import { quantity } from "../../domain/typed";
import { studioPath, useSession } from "../common/session";
import { useClaim } from "../common/use-claim";
import type { Claim } from "../common/use-claim";
import { usePlaces } from "./use-places";
import type { IfSo } from "./what-if-dates";

export interface PieceWhatIf {
  places: readonly PlaceRow[];
  thereId: string;
  setThere: (id: string) => void;
  cover: CoverState | null;
  setCover: (cover: CoverState) => void;
  thickness: string;
  setThickness: (typed: string) => void;
  claim: Claim;
  ifSo: IfSo | null;
  reckon: () => Promise<void>;
}

/** What would come of a piece; the studio knows what came of it so far, so only the change is asked. */
export function usePieceWhatIf(pieceId: string): PieceWhatIf {
  const { studio, member } = useSession().membership;
  const places = usePlaces().filter(({ kind }) => kind !== "kiln");
  const [thereId, setThere] = useState("");
  const [cover, setCover] = useState<CoverState | null>(null);
  const [thickness, setThickness] = useState("");
  const [ifSo, show] = useState<IfSo | null>(null);
  const claim = useClaim();

  const reckon = async (): Promise<void> => {
    const body: SupposedAsked = {
      ...(thereId === "" ? {} : { place_id: thereId }),
      ...(cover === null ? {} : { cover }),
      ...(thickness.trim() === "" ? {} : { thickest_mm: quantity(thickness, member.units.length, "mm") }),
    };
    const told = await claim.claim<Supposed>({ method: "POST", path: studioPath(studio.slug, `pieces/${pieceId}/what-if/`), body });
    show(told && ifSoOf(told));
  };
  return { places, thereId, setThere, cover, setCover, thickness, setThickness, claim, ifSo, reckon };
}

function ifSoOf({ at, as_it_is, windows, curve, unreachable, confidence, warnings, rests_on }: Supposed): IfSo {
  return { at, asItIs: as_it_is, windows, curve, unreachable, confidence, warnings, restsOn: rests_on, working: [] };
}

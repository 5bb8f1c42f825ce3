import { useState } from "preact/hooks";
import type { PlaceRow, Supposed, SupposedAsked } from "../../api/shapes-pieces";
import { studioPath, useSession } from "../common/session";
import { usePlaces } from "./use-places";
import type { IfSo } from "./what-if-dates";
import { useChange } from "./what-if-form";
import type { TypedChange } from "./what-if-form";

export interface PieceWhatIf {
  places: readonly PlaceRow[];
  thereId: string;
  setThere: (id: string) => void;
  change: TypedChange;
  reckon: () => Promise<void>;
}

/** What would come of a piece; the studio knows what came of it so far, so only the change is asked. */
export function usePieceWhatIf(pieceId: string): PieceWhatIf {
  const { studio } = useSession().membership;
  const places = usePlaces().filter(({ kind }) => kind !== "kiln");
  const [thereId, setThere] = useState("");
  const change = useChange();
  const { cover, thickest_mm, claim, show } = change;

  const reckon = async (): Promise<void> => {
    const body: SupposedAsked = {
      ...(thereId === "" ? {} : { place_id: thereId }),
      ...(cover === null ? {} : { cover }),
      ...(thickest_mm === null ? {} : { thickest_mm }),
    };
    const told = await claim.claim<Supposed>({ method: "POST", path: studioPath(studio.slug, `pieces/${pieceId}/what-if/`), body });
    show(told && ifSoOf(told));
  };
  return { places, thereId, setThere, change, reckon };
}

function ifSoOf({ at, as_it_is, windows, curve, unreachable, confidence, warnings, rests_on }: Supposed): IfSo {
  return { at, asItIs: as_it_is, windows, curve, unreachable, confidence, warnings, restsOn: rests_on, working: [] };
}

/** What if, of a piece: put elsewhere, covered otherwise, pressed thicker. Reckoned by the studio, so it needs a signal. */
import type { DryingAnswer } from "../../api/shapes-pieces";
import { length } from "../../domain/format";
import { Select } from "../../ui/select";
import { useSession } from "../common/session";
import { WhenHeard } from "../common/when-heard";
import { groupedPlaces } from "./use-places";
import { useDrying, usePieceScreen } from "./use-piece";
import { usePieceWhatIf } from "./use-piece-what-if";
import type { PieceWhatIf } from "./use-piece-what-if";
import { WhatIfForm } from "./what-if-form";

export function PieceWhatIfScreen({ id = "" }: { id?: string }) {
  const screen = usePieceScreen(id);
  const drying = useDrying(id);
  return (
    <WhenHeard title="What if" within={`/pieces/${id}`} screen={screen}>
      {({ piece }) => <Ready key={id} id={id} mark={piece.mark} hereId={piece.place?.id ?? ""} drying={drying} />}
    </WhenHeard>
  );
}

function Ready({ id, mark, hereId, drying }: { id: string; mark: string; hereId: string; drying: DryingAnswer | null }) {
  const asked = usePieceWhatIf(id);
  const { units } = useSession().membership.member;
  const pressed = drying?.inputs["thickest_mm"];
  return (
    <WhatIfForm
      change={asked.change} reckon={asked.reckon} within={`/pieces/${id}`} mark={mark}
      from={`The studio reckons this from what ${mark} did so far`} asItIs={typeof pressed === "number" ? length(pressed, units) : null}
    >
      <There asked={asked} hereId={hereId} />
    </WhatIfForm>
  );
}

function There({ asked: { places, thereId, setThere }, hereId }: { asked: PieceWhatIf; hereId: string }) {
  const elsewhere = groupedPlaces(places).map(({ room, inside }) => ({
    label: room.name,
    options: [room, ...inside].filter((place) => place.id !== hereId).map((place) => ({ value: place.id, words: place.name })),
  }));
  const here = places.find((place) => place.id === hereId);
  return <Select label="Put in" name="there" groups={elsewhere} chosen={thereId} none={here ? `Left where it is, ${here.name}` : "Left where it is"} onChoose={setThere} />;
}

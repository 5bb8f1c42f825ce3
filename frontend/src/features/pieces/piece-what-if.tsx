/** What if, of a piece: put elsewhere, covered otherwise, pressed thicker. Reckoned by the studio, so it needs a signal. */
import type { DryingAnswer } from "../../api/shapes-pieces";
import { length } from "../../domain/format";
import { Choice, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Select } from "../../ui/select";
import { Screen } from "../common/screen";
import { useSession } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { COVERS } from "./stage";
import { groupedPlaces } from "./use-places";
import { useDrying, usePieceScreen } from "./use-piece";
import { usePieceWhatIf } from "./use-piece-what-if";
import type { PieceWhatIf } from "./use-piece-what-if";
import { Dates } from "./what-if-dates";
import css from "../studio/studio.module.css";

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
  const now = useNow();
  const asked = usePieceWhatIf(id);
  const { units } = useSession().membership.member;
  const { claim } = asked;
  const pressed = drying?.inputs["thickest_mm"];
  const asItIs = typeof pressed === "number" ? `; ${length(pressed, units)} as it is` : "";
  const wrong = claim.wrong ?? claim.errors.find(({ pointer }) => pointer !== "#/thickest_mm")?.detail;
  return (
    <Screen title="What if" when={mark} within={`/pieces/${id}`} isSeam={false} tray={<Tray><MainAct isDisabled={claim.isAsking} onPress={() => { void asked.reckon(); }}>{claim.isAsking ? "Reckoning…" : "Reckon"}</MainAct></Tray>}>
      {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
      {asked.ifSo && <Dates ifSo={asked.ifSo} now={now} />}
      <p>The studio reckons this from what {mark} did so far: it needs a signal. Nothing is kept and nothing moves.</p>
      <div class={css.stack}>
        <There asked={asked} hereId={hereId} />
        <Choice legend="Covered" name="cover" options={COVERS} chosen={asked.cover} onChoose={asked.setCover} />
        <Field label={`Thickness, ${units.length}${asItIs}`} name="thickest_mm" inputMode="decimal" value={asked.thickness} onType={asked.setThickness} wrong={claim.wrongAt("#/thickest_mm")} />
      </div>
    </Screen>
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

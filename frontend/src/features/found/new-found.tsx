/** Found something: what, where, how large, how far along. Whose it may be is told once the studio has heard it. */
import { Act, Choice, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { useState } from "preact/hooks";
import { THING_MOST } from "../../domain/limits";
import { PhotoField, Photos } from "../common/photos";
import { Screen } from "../common/screen";
import { useSession } from "../common/session";
import order from "../orders/order.module.css";
import { PlaceChoice } from "../pieces/place-choice";
import css from "./found.module.css";
import { LOOKS } from "./found-words";
import { useNewFound } from "./use-new-found";

const HOME = "/orders";

export function NewFoundScreen() {
  const form = useNewFound();
  const { units } = useSession().membership.member;
  const [isPlacing, place] = useState(false);
  const { draft, change, wrongAt, wrong } = form;
  if (isPlacing) {
    return (
      <Screen title="Found" when="where?" within={HOME} isSeam={false} tray={<Tray><Act onPress={() => { place(false); }}>Not now</Act></Tray>}>
        <PlaceChoice hereId={draft.placeId} onChoose={({ id, name }) => { change({ placeId: id, placeName: name }); place(false); }} />
      </Screen>
    );
  }
  const mode = units.length === "mm" ? "decimal" : "text";
  return (
    <Screen title="Found" when="something without a name" within={HOME} isSeam={false} tray={<Tray><MainAct onPress={form.keep} wide="Keep it">Keep</MainAct></Tray>}>
      {wrong && <p class={order.wrong} role="alert">{wrong}</p>}
      <Photos ids={draft.photoIds} of="of it" />
      <PhotoField photos={draft.photos} onChange={(photos) => { change({ photos }); }} />
      <Field label="What is it" name="what" most={THING_MOST} value={draft.what} onType={(what) => { change({ what }); }} wrong={wrongAt("#/what")} />
      <div class={order.stack}>
        <Act onPress={() => { place(true); }}>{draft.placeName === "" ? "Where does it stand…" : `On ${draft.placeName}`}</Act>
        {wrongAt("#/place_id") && <p class={order.wrong} role="alert">{wrongAt("#/place_id")}</p>}
      </div>
      <Choice legend="How far along" name="looks" options={LOOKS} chosen={draft.looks === "" ? null : draft.looks} onChoose={(looks) => { change({ looks }); }} />
      <fieldset class={css.sizes}>
        <legend>How large, {units.length}</legend>
        <Field label="long" name="x_mm" value={draft.x} onType={(x) => { change({ x }); }} inputMode={mode} wrong={wrongAt("#/x_mm")} />
        <Field label="wide" name="y_mm" value={draft.y} onType={(y) => { change({ y }); }} inputMode={mode} wrong={wrongAt("#/y_mm")} />
        <Field label="high" name="height_mm" value={draft.height} onType={(height) => { change({ height }); }} inputMode={mode} wrong={wrongAt("#/height_mm")} />
      </fieldset>
      <Field label="Mark, as far as it can be read" name="mark_seen" most={60} value={draft.markSeen} onType={(markSeen) => { change({ markSeen }); }} wrong={wrongAt("#/mark_seen")} />
      <p>Until somebody says that it is theirs, it is nobody’s and no load may take it.</p>
    </Screen>
  );
}

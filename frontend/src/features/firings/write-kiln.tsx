/** A kiln written down, or changed: asked of the studio at once; what was typed stays until it is taken. */
import { useLocation } from "preact-iso";
import { useState } from "preact/hooks";
import type { KilnNow } from "../../api/shapes-firings";
import type { Call } from "../../api/client";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Select } from "../../ui/select";
import { Screen } from "../common/screen";
import { hasGrant, studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import { useDraft } from "../common/use-draft";
import { WhenHeard } from "../common/when-heard";
import { usePlaces } from "../pieces/use-places";
import { KilnForm } from "./kiln-form";
import { kilnChanges, kilnFields, kilnTyped, NO_KILN } from "./kiln-typed";
import type { KilnTyped } from "./kiln-typed";
import css from "./kilns.module.css";
import { OneKiln } from "./one-kiln";
import { useKilns } from "./use-kilns";
import type { Kilns } from "./use-kilns";

const HOME = "/kilns";

export function NewKilnScreen() {
  const screen = useKilns();
  return <WhenHeard title="New kiln" within={HOME} screen={screen}>{(kilns) => <WriteKiln kilns={kilns} kiln={null} again={screen.again} />}</WhenHeard>;
}

export function ChangeKilnScreen({ id = "" }: { id?: string }) {
  return <OneKiln id={id}>{(kiln, kilns, _, again) => <WriteKiln key={id} kilns={kilns} kiln={kiln} again={again} />}</OneKiln>;
}

function WriteKiln({ kilns, kiln: given, again }: { kilns: Kilns; kiln: KilnNow | null; again: () => void }) {
  // As it stood when the form was opened: what somebody else changes meanwhile is refused, not written over.
  const [kiln] = useState(given);
  const { membership } = useSession();
  const { units } = membership.member;
  const { route } = useLocation();
  const rooms = usePlaces().filter(({ kind }) => kind !== "kiln");
  const before: KilnTyped = kiln === null ? NO_KILN : kilnTyped(kiln, units);
  const { draft, change, clear } = useDraft<KilnTyped>(kiln === null ? "kiln" : `kiln ${kiln.id}`, () => before);
  const { claim, isAsking, wrong, wrongAt } = useClaim();
  const path = (end: string): string => studioPath(membership.studio.slug, `kilns/${end}`);
  const act = { ...envelope(), based_on: kilns.seq };
  const callOf = (): Call => (kiln === null
    ? { method: "POST", path: path(""), body: { ...act, ...kilnFields(draft, units), ...(draft.roomId === "" ? {} : { parent_place_id: draft.roomId }) } }
    : { method: "PATCH", path: path(`${kiln.id}/`), body: { ...act, ...kilnChanges(before, draft, units) }, headers: { "If-Match": `"${String(kiln.revision)}"` } });
  const send = async (): Promise<void> => {
    const answer = await claim<{ kiln: KilnNow }>(callOf());
    if (answer === null) return;
    clear();
    again();
    route(`/kilns/${answer.kiln.id}`);
  };
  const leave = (): void => { clear(); route(kiln === null ? HOME : `/kilns/${kiln.id}`); };
  const mayService = hasGrant(membership, "service_kilns");
  const tray = (
    <Tray>
      <MainAct isDisabled={isAsking || !mayService} onPress={() => void send()}>{isAsking ? "Asking" : kiln === null ? "Write it down" : "Change it"}</MainAct>
      <Act onPress={leave}>Let it go</Act>
    </Tray>
  );
  return (
    <Screen title={kiln === null ? "New kiln" : `${kiln.number} ${kiln.name}`} when={kiln === null ? undefined : "change"} within={HOME} isSeam={false} tray={tray}>
      {!mayService && <p>Whoever services kilns writes them down: a technician, or an owner.</p>}
      {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
      <KilnForm typed={draft} change={change} units={units} wrongAt={wrongAt} />
      {kiln === null && (
        <Select label="In which room" name="parent_place_id" options={rooms.map((place) => ({ value: place.id, words: place.name }))} chosen={draft.roomId} none="not said" onChoose={(roomId) => { change({ roomId }); }} wrong={wrongAt("#/parent_place_id")} />
      )}
      {wrong && <p class={css.wrong}>{wrong}</p>}
    </Screen>
  );
}

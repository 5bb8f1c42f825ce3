/** Another slot, kiln, cone or watcher for a load: asked of the studio at once, since everybody with ware in it is told. */
import { useState } from "preact/hooks";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { studioPath, useSession, useZone } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import { useDegrees } from "../common/use-degrees";
import css from "./kilns.module.css";
import { changeFields, slotFaults, slotOf } from "./slot";
import type { Slot } from "./slot";
import { SlotFields, useSlotLists } from "./slot-fields";
import { useKilns } from "./use-kilns";
import type { Load } from "./use-load";
import { NO_SHEET } from "./use-load";

/** The names of the act's fields beside ours. */
const POINTERS: Record<keyof Slot, string> = {
  kilnId: "#/kiln_id", kind: "#/kind", cone: "#/cone", programmeId: "#/programme_id", startsAt: "#/starts_at", cutoffAt: "#/cutoff_at", watcherId: "#/watcher_id",
};

export function ChangeLoad({ it, again }: { it: Load; again: () => void }) {
  const { membership } = useSession();
  const zone = useZone();
  const say = useDegrees();
  const kilns = useKilns();
  const lists = useSlotLists();
  const { load } = it;
  const [slot, set] = useState<Slot>(() => slotOf(load, zone));
  const [isTried, setTried] = useState(false);
  const { claim, isAsking, wrong, wrongAt } = useClaim();
  const faults = slotFaults(slot, zone);
  const makers = load.makers.flatMap(({ person }) => (person ? [person.first_name] : [])).join(", ");

  const send = async (): Promise<void> => {
    setTried(true);
    if (Object.keys(faults).length > 0) return;
    const body = { ...envelope(), based_on: it.seq, ...changeFields(slot, zone) };
    const answer = await claim({ method: "PATCH", path: studioPath(membership.studio.slug, `loads/${load.id}/`), body, headers: { "If-Match": `"${String(load.revision)}"` } });
    if (answer === null) return;
    again();
    it.open(NO_SHEET);
  };
  const tray = (
    <Tray>
      <MainAct isDisabled={isAsking} onPress={() => void send()}>{isAsking ? "Asking" : "Change it"}</MainAct>
      <Act onPress={() => { it.open(NO_SHEET); }}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={load.number} when="change" within="/kilns" isSeam={false} tray={tray}>
      {makers && <p>{`${makers} will be told.`}</p>}
      {wrong && <p class={css.wrong} role="alert">{say(wrong)}</p>}
      <SlotFields
        slot={slot} set={(change) => { set({ ...slot, ...change }); }} kilns={kilns.state === "ready" ? kilns.value.kilns : []} lists={lists} units={membership.member.units} hasKind={false}
        wrongAt={(field) => wrongAt(POINTERS[field]) ?? (isTried ? faults[field] ?? null : null)}
      />
    </Screen>
  );
}

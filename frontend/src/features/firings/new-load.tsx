/** A new load: a slot of a kiln, asked for; it gets its number when the studio hears it. */
import { useLocation } from "preact-iso";
import { useState } from "preact/hooks";
import { coneWords } from "./cone-series";
import { MainAct, Act } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { uuid7 } from "../../offline/ids";
import { Screen } from "../common/screen";
import { useSession, useZone } from "../common/session";
import { useAct } from "../common/use-outbox";
import { WhenHeard } from "../common/when-heard";
import css from "./kilns.module.css";
import { slotFaults, slotFields } from "./slot";
import type { Slot } from "./slot";
import { SlotFields, useSlotLists } from "./slot-fields";
import { useKilns, useQueue } from "./use-kilns";
import type { Kilns } from "./use-kilns";

const TITLE = "New load";

export function NewLoadScreen() {
  const screen = useKilns();
  return <WhenHeard title={TITLE} within="/kilns" screen={screen}>{(value) => <Ready kilns={value} />}</WhenHeard>;
}

function Ready({ kilns: { kilns, seq, mayBuild } }: { kilns: Kilns }) {
  const { units } = useSession().membership.member;
  const zone = useZone();
  const { route } = useLocation();
  const act = useAct();
  const queue = useQueue();
  const lists = useSlotLists();
  // The group that waits longest is the likeliest to be fired next.
  const [oldest] = [...(queue?.groups ?? [])].filter(({ cone }) => cone !== "").sort((one, other) => other.oldest_days - one.oldest_days);
  const first: Slot = {
    kilnId: kilns.find(({ is_out_of_use }) => !is_out_of_use)?.id ?? null, kind: oldest?.kind ?? "bisque", cone: oldest?.cone ?? "", programmeId: null, startsAt: "", cutoffAt: "", watcherId: null,
  };
  const [typed, set] = useState<Partial<Slot>>({});
  const [isTried, setTried] = useState(false);
  const slot = { ...first, ...typed };
  const wrong = slotFaults(slot, zone);
  const kiln = kilns.find(({ id }) => id === slot.kilnId);

  const send = async (): Promise<void> => {
    setTried(true);
    if (Object.keys(wrong).length > 0 || kiln === undefined) return;
    const id = uuid7();
    const what = `${slot.kind}, ${coneWords(slot.cone.trim()).toLowerCase()}`;
    await act({
      id, path: "loads/", fields: slotFields(slot, zone), basedOn: seq, verb: "opened_load", about: { load_id: id, kiln_id: kiln.id, what }, creates: [id],
      words: `${kiln.number}: a new load, ${what}`,
    });
    route("/kilns");
  };
  const tray = (
    <Tray>
      <MainAct isDisabled={!mayBuild} onPress={() => void send()}>Open load</MainAct>
      <Act href="/kilns">Not now</Act>
    </Tray>
  );
  return (
    <Screen title={TITLE} within="/kilns" isSeam={false} tray={tray}>
      {!mayBuild && <p>A technician or an owner opens loads; you put ware on them.</p>}
      {kiln?.doing.load && <p class={css.said}>{`${kiln.number} now: ${kiln.doing.words}. The new load waits its turn.`}</p>}
      <SlotFields slot={slot} set={(change) => { set({ ...typed, ...change }); }} kilns={kilns} lists={lists} units={units} hasKind wrongAt={(field) => (isTried ? wrong[field] ?? null : null)} />
      <p class={css.said}>A slot is asked for: without signal it waits on this phone, and is booked once the studio has heard it.</p>
    </Screen>
  );
}

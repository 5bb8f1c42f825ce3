/** The steps that are seldom: another slot, calling off, what went wrong. Those that end a load stand apart. */
import type { EventKind } from "../../api/shapes-firings";
import { Act } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { hasGrant, useSession } from "../common/session";
import css from "./kilns.module.css";
import { STEPS } from "./load-acts";
import type { Load } from "./use-load";
import { NO_SHEET } from "./use-load";

export function MoreSheet({ it }: { it: Load }) {
  const { membership } = useSession();
  const { load, open } = it;
  const { may, nexts, state } = load;
  const event = (kind: EventKind) => nexts.includes(kind) && <Act onPress={() => { open({ name: "event", kind }); }}>{STEPS[kind].act}</Act>;
  const isBooked = state === "open" || state === "settled" || state === "loading";
  return (
    <Screen title={load.number} when="more" within="/kilns" isSeam={false} tray={<Tray><Act onPress={() => { open(NO_SHEET); }}>Not now</Act></Tray>}>
      <div class={css.stack}>
        {isBooked && may.change && <Act onPress={() => { open({ name: "change" }); }}>Another slot, kiln, cone or watcher…</Act>}
        {state === "settled" && may.reopen && event("reopened")}
        {may.record && event("resumed")}
        {may.record && event("ended")}
        {may.record && event("stopped")}
        {may.record && !isBooked && <Act href={`/loads/${load.id}/readings`}>Readings as a table…</Act>}
        {hasGrant(membership, "see_own_prices") && <Act href={`/loads/${load.id}/fees`}>What it costs</Act>}
        {!isBooked && <Act onPress={() => { open({ name: "ware" }); }}>Pieces in it</Act>}
      </div>
      {may.call_off && nexts.includes("called_off") && <div class={css.far}>{event("called_off")}</div>}
    </Screen>
  );
}

/** A firing that stopped counts as fired by what its cones show: read here, beside what the kiln itself read. */
import { useState } from "preact/hooks";
import { upperFirst } from "../../domain/format";
import { REASON_MOST } from "../../domain/limits";
import { Act, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { saidByCones } from "./cone-words";
import { ConesSeen } from "./cones-seen";
import css from "./kilns.module.css";
import type { Shown } from "./load";
import { stoppedFacts } from "./stopped";
import { useConesSeen } from "./use-cones-seen";
import { NO_SHEET } from "./use-load";

export function ByConeSheet({ it, fit, around }: Shown) {
  const { load } = it;
  const seen = useConesSeen(load, fit);
  const [reason, typeReason] = useState("");
  const read = [...load.cones, ...seen.typed.map(({ hand, ...one }) => ({ ...one, clock_hand: hand }))];
  const said = saidByCones(read, load.cone);
  const hasReason = reason.trim() !== "";
  const tray = (
    <Tray isDead={it.saying.isDead}>
      <MainAct isDisabled={said !== "down" && !hasReason} onPress={() => { it.acceptByCones(seen.typed, said === "down" ? "" : reason); }}>
        {said === "down" ? "Fired, by its cones" : hasReason ? "Fired all the same" : UNDECIDED[said]}
      </MainAct>
      <Act onPress={() => { it.open(NO_SHEET); }}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={load.number} when="by its cones" within="/kilns" isSeam={false} tray={tray}>
      <p>It counts as fired, and its ware as through the fire. The power cut stays in its log.</p>
      {stoppedFacts(load, around).map(({ label, value, note }) => <p key={label}>{upperFirst(label)}: <b>{value}</b>{note && ` · ${note}`}</p>)}
      <ConesSeen seen={seen} />
      <p class={css.said} role="status">{SAID[said](load.cone)}</p>
      {said !== "down" && <Field label="Or why it counts as fired all the same" name="reason" most={REASON_MOST} value={reason} onType={typeReason} />}
    </Screen>
  );
}

const UNDECIDED = { not_down: "Not down yet", unread: "None read yet" } as const;

const SAID = {
  down: (cone: string): string => `Cone ${cone} is down on every shelf read.`,
  not_down: (cone: string): string => `Cone ${cone} is not down on every shelf read: the ware is under-fired.`,
  unread: (cone: string): string => `Nobody has read a cone ${cone} yet.`,
} as const;

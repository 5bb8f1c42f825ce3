import { useState } from "preact/hooks";
import { dayAndClock } from "../../domain/clock";
import { SmallAct } from "../../ui/act";
import { useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import css from "./studio.module.css";
import { useDevices } from "./use-me";

/** Phones that act for this person; an owner sees everybody's. Signing one off ends its session at once; what it wrote stays. */
export function MyDevices() {
  const zone = useZone();
  const now = useNow();
  const { deviceId } = useSession();
  const { devices, claim, signOff, unlock } = useDevices();
  const [askedId, ask] = useState<string | null>(null);
  return (
    <section class={css.section} aria-label="Phones">
      <h2>Phones</h2>
      {devices.length === 0 && <p class={css.note}>None heard of yet.</p>}
      {devices.map((device) => (
        <div key={device.id} class={css.line}>
          <p>
            <b>{device.name}</b>{device.id === deviceId && ", this one"}{device.is_shared && ", shared"}{device.is_locked && ", locked"}
            <br />
            <span class={css.note}>{device.seen_at ? `last heard ${dayAndClock(new Date(device.seen_at), now, zone)}` : "never heard"}</span>
          </p>
          {device.is_locked && <SmallAct spoken={`Unlock ${device.name}`} onPress={() => { void unlock(device.id); }}>Unlock</SmallAct>}
          {device.id !== deviceId && (askedId === device.id
            ? <SmallAct spoken={`Sign ${device.name} off for good`} onPress={() => { ask(null); void signOff(device.id); }}>For good</SmallAct>
            : <SmallAct spoken={`Sign off ${device.name}`} onPress={() => { ask(device.id); }}>Sign off</SmallAct>)}
        </div>
      ))}
      {claim.wrong && <p class={css.wrong} role="alert">{claim.wrong}</p>}
    </section>
  );
}

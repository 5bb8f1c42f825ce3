/** A shared phone that an owner signed off: what happened to what was on it, and how to go on. */
import { count } from "../domain/format";
import { useStateOf } from "../features/common/use-outbox";
import type { Outbox } from "../offline/outbox";
import { Act } from "../ui/act";
import { Body, Frame, Title, Tray } from "../ui/frame";

export function SignedOff({ name, outbox, signIn }: { name: string; outbox: Outbox; signIn: () => void }) {
  const { acts, halt } = useStateOf(outbox);
  const held = acts.filter((act) => act.state === "held").length;
  const waiting = acts.filter((act) => act.state === "waiting").length;
  return (
    <Frame>
      <Title name="Signed off" when={name} />
      <Body isSeam={false}>
        <p><b>An owner signed this phone off.</b> What had been read here is gone from it.</p>
        {held > 0 && <p>{`${count(held, "act", "acts")} from before went to the studio and ${held === 1 ? "is" : "are"} kept for the owner to look at.`}</p>}
        {waiting > 0 && (halt === "signed_off"
          ? <p>{`${count(waiting, "act", "acts")} not sent ${waiting === 1 ? "stays" : "stay"} kept on this phone. What happened after it was signed off is not taken from here: tell an owner, who can write it down.`}</p>
          : <p>{`${count(waiting, "act", "acts")} kept on this phone ${waiting === 1 ? "waits" : "wait"} to be sent, for the owner to look at.`}</p>)}
      </Body>
      <Tray><Act onPress={signIn}>Sign in by name</Act></Tray>
    </Frame>
  );
}

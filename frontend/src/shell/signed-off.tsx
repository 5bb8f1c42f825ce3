/** A shared phone that an owner signed off: what happened to what was on it, and how to go on. */
import { count } from "../domain/format";
import { KeptPhotos } from "../features/common/photos";
import { useStateOf } from "../features/common/use-outbox";
import type { Outbox } from "../offline/outbox";
import { Act } from "../ui/act";
import { Body, Frame, Title, Tray } from "../ui/frame";

export function SignedOff({ name, outbox, signIn }: { name: string; outbox: Outbox; signIn: () => void }) {
  const { acts, halt } = useStateOf(outbox);
  const held = acts.filter((act) => act.state === "held").length;
  const waiting = acts.filter((act) => act.state === "waiting");
  const isStopped = halt === "signed_off";
  const left = acts.filter((act) => act.state === "parked" || (act.state === "waiting" && isStopped));
  const photos = left.filter((act) => act.photo !== null);
  const told = left.filter((act) => act.photo === null);
  return (
    <Frame>
      <Title name="Signed off" when={name} />
      <Body isSeam={false}>
        <p><b>An owner signed this phone off.</b> What had been read here is gone from it.</p>
        {held > 0 && <p>{`${count(held, "act", "acts")} from before went to the studio and ${held === 1 ? "is" : "are"} kept for the owner to look at.`}</p>}
        {waiting.length > 0 && !isStopped && <p>{`${count(waiting.length, "act", "acts")} kept on this phone ${waiting.length === 1 ? "waits" : "wait"} to be sent, for the owner to look at.`}</p>}
        {told.length > 0 && <p>{`${count(told.length, "act", "acts")} not sent ${told.length === 1 ? "stays" : "stay"} kept on this phone. What happened after it was signed off is not taken from here: tell an owner, who can write it down.`}</p>}
        {told.length > 0 && <ul>{told.map((act) => <li key={act.id}>{act.words}</li>)}</ul>}
        {photos.length > 0 && <p>{`${count(photos.length, "photo", "photos")} ${photos.length === 1 ? "stays" : "stay"} on this phone: no photo is sent from a phone signed off. Save what the studio should have, and add it from another phone.`}</p>}
        <KeptPhotos acts={photos} />
      </Body>
      <Tray><Act onPress={signIn}>Sign in by name</Act></Tray>
    </Frame>
  );
}

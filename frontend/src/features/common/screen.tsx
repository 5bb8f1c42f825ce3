/** The frame of every screen: title, who holds the phone, the line of state, the tray, the places. */
import type { ComponentChildren } from "preact";
import { dayAndClock } from "../../domain/clock";
import { Body, Frame, Initials, PlaceBar, StateLine, Title } from "../../ui/frame";
import { useBack, usePath } from "./back";
import { useSession, useZone } from "./session";
import { useNow } from "./use-now";
import { useOutboxState } from "./use-outbox";

interface ScreenProps {
  title: string;
  when?: string | undefined;
  /** When the rows shown were heard, if they are not fresh. */
  heardAt?: Date | null | undefined;
  isSeam?: boolean;
  /** A desk's whole width, with the acts at the head instead of a tray. */
  isWide?: boolean;
  acts?: ComponentChildren;
  /** The place a screen of one thing belongs to: *Back* takes the room of the person and More. */
  within?: string;
  tray?: ComponentChildren;
  children: ComponentChildren;
}

export function Screen({ title, when, heardAt, isSeam = true, isWide = false, acts, within, tray, children }: ScreenProps) {
  const { places } = useSession();
  const path = usePath();
  const isHere = (href: string): boolean => (within === undefined ? path === href || path.startsWith(`${href}/`) : href === within);
  return (
    <Frame>
      <Title name={title} when={when} acts={acts}>
        {within === undefined ? <Phone /> : <Back home={within} />}
      </Title>
      <PhoneLine heardAt={heardAt ?? null} />
      <Body isSeam={isSeam} isWide={isWide}>{children}</Body>
      {tray}
      <PlaceBar places={places.map((place) => ({ ...place, isHere: isHere(place.href) }))} />
    </Frame>
  );
}

function Phone() {
  const { member } = useSession().membership;
  return (
    <>
      <a href="/person" aria-label={`${member.first_name} holds this phone`}><Initials initials={member.initials} /></a>
      <a href="/more">More</a>
    </>
  );
}

function Back({ home }: { home: string }) {
  const back = useBack(home);
  return <a href={home} onClick={(event) => { event.preventDefault(); event.stopPropagation(); back(); }}>Back</a>;
}

const WHY = { no_signal: "no signal", no_studio: "the studio does not answer", none: "waiting to send" } as const;

/** `3 kept on this phone · no signal`, or how old the rows are, or nothing. */
function PhoneLine({ heardAt }: { heardAt: Date | null }) {
  const zone = useZone();
  const now = useNow();
  const path = usePath();
  const { me, isSignedOut } = useSession();
  const { acts, halt, isSending } = useOutboxState();
  const mine = acts.filter((act) => act.username === me.username);
  const held = mine.filter((act) => act.state === "held").length;
  const waiting = mine.filter((act) => act.state === "waiting").length;
  const notTaken = mine.filter((act) => act.state === "parked").length;
  const age = heardAt ? `as heard at ${dayAndClock(heardAt, now, zone)}` : "";
  if (halt === "not_kept") return <StateLine>This phone could not keep that. Free some space on it, then tap again.</StateLine>;
  if (halt === "locked") return <StateLine count={waiting || undefined}>this phone is locked after wrong PINs · an owner unlocks it</StateLine>;
  if (halt === "sign_in" || halt === "signed_off" || isSignedOut) {
    return waiting > 0
      ? <StateLine count={waiting}><b>kept on this phone</b> · <a href="/sign-in">sign in to send</a></StateLine>
      : <StateLine>signed out · <a href="/sign-in">sign in</a></StateLine>;
  }
  if (waiting > 0) {
    const why = isSending ? "sending" : WHY[halt ?? "none"];
    return <StateLine count={waiting}><b>kept on this phone</b> · {why}</StateLine>;
  }
  if (notTaken > 0 && path !== "/not-taken") return <StateLine count={notTaken} natch="refused"><a href="/not-taken">not taken</a></StateLine>;
  if (held > 0) return <StateLine count={held}>kept for the owner to look at</StateLine>;
  return age ? <StateLine>{age}</StateLine> : null;
}


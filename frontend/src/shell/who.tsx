/** A shared phone in nobody's hand: one tap on one's initials, and the next act is one's own. */
import { useEffect, useRef, useState } from "preact/hooks";
import { OfflineError, ProblemError } from "../api/problem";
import type { SharedPerson } from "../api/shapes";
import { useStateOf } from "../features/common/use-outbox";
import type { SharedPhone } from "../offline/shared";
import type { Outbox } from "../offline/outbox";
import { Body, Frame, Initials, StateLine, Title } from "../ui/frame";
import css from "./who.module.css";

const ASK_EVERY_MS = 10 * 60_000;

interface WhoProps {
  shared: SharedPhone;
  outbox: Outbox;
  pick: (person: SharedPerson) => Promise<void>;
  /** Ask again who is in the studio. */
  refresh: () => void;
}

export function WhoIsAtWork({ shared, outbox, pick, refresh }: WhoProps) {
  const [isAsking, setAsking] = useState(false);
  const [wrong, setWrong] = useState<string | null>(null);
  const asking = useRef(refresh);
  asking.current = refresh;
  useEffect(() => {
    asking.current();
    const timer = setInterval(() => { asking.current(); }, ASK_EVERY_MS);
    return () => { clearInterval(timer); };
  }, []);
  const choose = async (person: SharedPerson): Promise<void> => {
    setAsking(true);
    setWrong(null);
    try {
      await pick(person);
    } catch (error) {
      setAsking(false);
      // They may have left meanwhile, or the phone was signed off.
      refresh();
      if (error instanceof OfflineError) setWrong(`${error.message} ${person.first_name} needs one the first time on this phone.`);
      else if (error instanceof ProblemError) setWrong(error.message);
      else throw error;
    }
  };
  return (
    <Frame>
      <Title name="Who is at work?" when={shared.name} />
      <KeptLine outbox={outbox} />
      <Body>
        <ul class={css.people}>
          {shared.people.map((person) => (
            <li key={person.id}>
              <button type="button" class={css.person} disabled={isAsking} onClick={() => void choose(person)}>
                <Initials initials={person.initials} />
                <span>{person.first_name}</span>
              </button>
            </li>
          ))}
        </ul>
        {shared.people.length === 0 && <p class={css.said}>Nobody is known here yet. It needs a signal once.</p>}
        {wrong && <p class={css.said} role="alert">{wrong}</p>}
      </Body>
    </Frame>
  );
}

function KeptLine({ outbox }: { outbox: Outbox }) {
  const { acts, halt } = useStateOf(outbox);
  const waiting = acts.filter((act) => act.state === "waiting").length;
  const why = halt === "locked" ? "locked after wrong PINs: an owner unlocks it" : "waiting to send";
  if (waiting > 0) return <StateLine count={waiting}><b>kept on this phone</b> · {why}</StateLine>;
  return halt === "locked" ? <StateLine>{why}</StateLine> : null;
}

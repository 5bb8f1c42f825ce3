/** Two stories of one thing, side by side; each answer beside what it comes to. No answer is the usual one. */
import { calledBy } from "../../domain/people";
import type { ClashAnswer } from "../../api/shapes-pieces";
import { Act } from "../../ui/act";
import { Halves } from "../../ui/halves";
import { Fact, Mark } from "../../ui/seam";
import { Standing } from "../../ui/standing";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { useScreen } from "../common/use-screen";
import { WhenHeard } from "../common/when-heard";
import css from "./clash.module.css";
import { askedWords, choiceWords, halfOf, meanwhile, whyTwo } from "./clash-words";
import { useClash, useOpenClashes } from "./use-clash";
import type { ToldOf } from "./use-clash";

const TITLE = "Clash";

export function ClashScreen({ id = "" }: { id?: string }) {
  return <Asked id={id} of="clashes" within="/racks" />;
}

export function LoadClashScreen({ id = "" }: { id?: string }) {
  return <Asked id={id} of="load-clashes" within="/kilns" />;
}

function Asked({ id, of, within }: { id: string; of: ToldOf; within: Within }) {
  const screen = useScreen<ClashAnswer>(`${of}/${id}/`);
  return <WhenHeard title={TITLE} within={within} screen={screen}>{(value, heardAt) => <Ready key={id} clash={value} of={of} within={within} heardAt={heardAt} />}</WhenHeard>;
}

type Within = "/racks" | "/kilns";

function Ready({ clash, of, within, heardAt }: { clash: ClashAnswer; of: ToldOf; within: Within; heardAt: Date | null }) {
  const zone = useZone();
  const now = useNow();
  const open = useOpenClashes().rows;
  const state = useClash(clash, of);
  const { subject, acts: [first, second] } = clash;
  const place = open.findIndex((one) => one.id === clash.id);
  const isOpen = clash.state === "open" && state.answered === null;
  return (
    <Screen title={TITLE} when={place < 0 ? undefined : `${String(place + 1)} of ${String(open.length)}`} within={within} heardAt={heardAt}>
      <SaidLine mark={subject.mark} saying={state.saying} />
      <Standing
        drawing={<a href={`/${subject.kind}s/${subject.id}`} class={css.mark}><Mark mark={subject.mark} noun={subject.noun} /></a>}
        natch={isOpen ? "two" : "done"} verdict={isOpen ? "Two stories" : "Settled"} evidence={whyTwo(clash.acts)}
      />
      {first && second && <Halves first={halfOf(first, { now, zone })} second={halfOf(second, { now, zone })} />}
      {isOpen ? <Answers clash={clash} answer={state.answer} isDead={state.saying.isDead} /> : (
        <Fact label="" natch={state.answered === null ? "done" : "kept"} value={state.answered ?? "It has been answered."} note={state.answered === null ? "Both stories stay to be read." : "kept here until the studio hears it"} />
      )}
    </Screen>
  );
}

function Answers({ clash, answer, isDead }: { clash: ClashAnswer; answer: (choice: "first" | "second" | "both") => void; isDead: boolean }) {
  return (
    <>
      <p class={css.meanwhile}><b>Until someone says,</b> {meanwhile(clash)}</p>
      {!clash.may_answer && <p class={css.meanwhile}>Ask {askedWords(clash.asked.map(calledBy(clash.asked)))}.</p>}
      <ul class={css.answers}>
        {clash.choices.map(({ choice, consequence }) => (
          <li key={choice} class={css.answer}>
            <Act isDisabled={!clash.may_answer || isDead} onPress={() => { answer(choice); }}>{choiceWords(clash, choice)}</Act>
            <span>{consequence}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

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

const TITLE = "Clash";
const HOME = "/racks";

export function ClashScreen({ id = "" }: { id?: string }) {
  const screen = useScreen<ClashAnswer>(`clashes/${id}/`);
  return <WhenHeard title={TITLE} within={HOME} screen={screen}>{(value, heardAt) => <Ready key={id} clash={value} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ clash, heardAt }: { clash: ClashAnswer; heardAt: Date | null }) {
  const zone = useZone();
  const now = useNow();
  const open = useOpenClashes();
  const state = useClash(clash);
  const { subject, acts: [first, second] } = clash;
  const place = open.findIndex((one) => one.id === clash.id);
  const isOpen = clash.state === "open" && state.answered === null;
  return (
    <Screen title={TITLE} when={place < 0 ? undefined : `${String(place + 1)} of ${String(open.length)}`} within={HOME} heardAt={heardAt}>
      <SaidLine mark={subject.mark} saying={state.saying} />
      <Standing
        drawing={<a href={`/pieces/${subject.id}`} class={css.mark}><Mark mark={subject.mark} noun={subject.noun} /></a>}
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

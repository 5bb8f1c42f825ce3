import { useState } from "preact/hooks";
import { Choice } from "../../ui/act";
import { currentLook, setLook } from "../common/look";
import type { Look } from "../common/look";
import { Screen } from "../common/screen";
import { useSession } from "../common/session";

const THEMES = [{ value: "sun", words: "Sun" }, { value: "shed", words: "Shed" }, { value: "phone", words: "As the phone" }] as const;
const HANDS = [{ value: "right", words: "Right hand" }, { value: "left", words: "Left hand" }] as const;
const SIZES = [
  { value: "100", words: "Plain" }, { value: "125", words: "Larger" }, { value: "150", words: "Large" }, { value: "200", words: "Twice" },
] as const;
const TEXTS: Record<(typeof SIZES)[number]["value"], Look["text"]> = { "100": 100, "125": 125, "150": 150, "200": 200 };
const BUZZES = [{ value: "no", words: "No buzz" }, { value: "yes", words: "Buzz" }] as const;

/** How this phone looks and feels to the person who holds it. */
export function MoreScreen() {
  const { me } = useSession();
  const [look, change] = useState(currentLook);
  const set = (part: Partial<Look>): void => {
    const next = { ...look, ...part };
    setLook(next, me.username);
    change(next);
  };
  const size = SIZES.find((option) => TEXTS[option.value] === look.text)?.value ?? "100";
  return (
    <Screen title="More" isSeam={false}>
      {!isSecureContext && <p>No padlock: this phone opens Natch only with a signal. What you enter is kept all the same.</p>}
      <Choice legend="Light where you stand" name="theme" options={THEMES} chosen={look.theme} onChoose={(theme) => { set({ theme }); }} />
      <Choice legend="Main act nearest to" name="hand" options={HANDS} chosen={look.hand} onChoose={(hand) => { set({ hand }); }} />
      <Choice legend="Size of text" name="text" options={SIZES} chosen={size} onChoose={(chosen) => { set({ text: TEXTS[chosen] }); }} />
      <Choice legend="On an answer" name="buzz" options={BUZZES} chosen={look.hasBuzz ? "yes" : "no"} onChoose={(buzz) => { set({ hasBuzz: buzz === "yes" }); }} />
    </Screen>
  );
}

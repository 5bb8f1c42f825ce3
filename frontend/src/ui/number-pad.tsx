/** Ten figures big enough for a thumb in a glove, where a phone's own keys are too small. */
import css from "./number-pad.module.css";

export type Key = "0" | "1" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9" | "back" | "wipe";

const KEYS: readonly Key[] = ["7", "8", "9", "4", "5", "6", "1", "2", "3", "wipe", "0", "back"];
const KEY_WORDS: Partial<Record<Key, string>> = { wipe: "Wipe", back: "One less" };

export function NumberPad({ press }: { press: (key: Key) => void }) {
  return (
    <div class={css.pad} role="group" aria-label="Number pad">
      {KEYS.map((key) => <button key={key} type="button" class={key in KEY_WORDS ? css.word : undefined} onClick={() => { press(key); }}>{KEY_WORDS[key] ?? key}</button>)}
    </div>
  );
}

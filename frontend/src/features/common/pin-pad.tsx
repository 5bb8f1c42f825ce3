/** The PIN of who holds a shared phone. It is not checked here: it goes with the act, and the studio checks it. */
import { useEffect, useRef, useState } from "preact/hooks";
import { Act, MainAct } from "../../ui/act";
import { Pair } from "../../ui/frame";
import { NumberPad } from "../../ui/number-pad";
import type { Key } from "../../ui/number-pad";
import css from "./pin-pad.module.css";

const LEAST = 4;
const MOST = 8;

function typedOn(pin: string, key: Key): string {
  if (key === "wipe") return "";
  if (key === "back") return pin.slice(0, -1);
  return (pin + key).slice(0, MOST);
}

export function PinPad({ name, answer }: { name: string; answer: (pin: string | null) => void }) {
  const [pin, type] = useState("");
  const sheet = useRef<HTMLDialogElement>(null);
  useEffect(() => { sheet.current?.showModal(); }, []);
  const isWhole = pin.length >= LEAST;
  const submit = (): void => { if (isWhole) answer(pin); };
  return (
    <dialog ref={sheet} class={css.sheet} aria-labelledby="pin-of" onCancel={() => { answer(null); }}>
      <form onSubmit={(event) => { event.preventDefault(); submit(); }}>
        <label class={css.typed}>
          <span id="pin-of">{`${name}’s PIN`}</span>
          <input
            type="password" inputMode="none" autocomplete="off" maxLength={MOST} value={pin}
            onInput={(event) => { type(event.currentTarget.value.replace(/\D/g, "")); }}
          />
        </label>
        <p class={css.note}>Kiln work on a shared phone takes it. Without signal it is checked when the act is heard.</p>
        <NumberPad press={(key) => { type(typedOn(pin, key)); }} />
        <Pair>
          <MainAct type="submit" isDisabled={!isWhole}>Go on</MainAct>
          <Act onPress={() => { answer(null); }}>Not now</Act>
        </Pair>
      </form>
    </dialog>
  );
}

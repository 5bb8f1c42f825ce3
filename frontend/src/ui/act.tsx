/** What one can press: an act, the one main act, a choice, a count, a field. Words only. */
import type { ComponentChildren } from "preact";
import css from "./act.module.css";
import { roomLeft } from "./room-left";

interface ActProps {
  children: ComponentChildren;
  onPress?: (() => void) | undefined;
  href?: string | undefined;
  /** What `href` leads to is saved under this name, not opened. */
  saveAs?: string | undefined;
  isDisabled?: boolean | undefined;
  /** For an act whose words alone do not say what it is done to. */
  spoken?: string | undefined;
  /** Longer words for the smallest screens, where the act has a row of its own: *T26 out*. */
  wide?: string | undefined;
  type?: "button" | "submit";
}

function pressable(style: string | undefined, { children, onPress, href, saveAs, isDisabled, spoken, wide, type = "button" }: ActProps) {
  if (href !== undefined) return <a class={style} href={href} download={saveAs} aria-label={spoken}>{children}</a>;
  const words = wide === undefined ? children : <><span class={css.short}>{children}</span><span class={css.wide}>{wide}</span></>;
  return (
    <button type={type} class={style} disabled={isDisabled} aria-label={spoken} onClick={onPress}>
      {words}
    </button>
  );
}

export function Act(props: ActProps) {
  return pressable(css.act, props);
}

/** One per screen, nearest the thumb. */
export function MainAct(props: ActProps) {
  return pressable(css.main, props);
}

/** Undo inside a row: 76 by 56. */
export function SmallAct(props: ActProps) {
  return pressable(`${css.act ?? ""} ${css.small ?? ""}`, props);
}

/** An act with one of the fault drawings over its word. */
export function PictureAct(props: ActProps) {
  return pressable(`${css.act ?? ""} ${css.picture ?? ""}`, props);
}

export interface Option<Value extends string> {
  value: Value;
  words: string;
  /** A second line under the word: the date of a block. */
  note?: string | undefined;
}

export function Choice<Value extends string>({ legend, name, options, chosen, onChoose }: {
  legend: string;
  name: string;
  options: readonly Option<Value>[];
  chosen: Value | null;
  onChoose: (value: Value) => void;
}) {
  return (
    <fieldset class={css.choices}>
      <legend>{legend}</legend>
      {options.map((option) => (
        <label key={option.value} class={css.choice}>
          <input class={css.over} type="radio" name={name} value={option.value} checked={option.value === chosen} onChange={() => { onChoose(option.value); }} />
          <svg viewBox="0 0 10 20" width="10" height="20" aria-hidden="true"><path d="M0 0a10 10 0 0 1 0 20z" fill="currentColor" /></svg>
          <span>{option.words}{option.note && <span class={css.optionNote}>{option.note}</span>}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** Minus, figure, plus; the figure can be typed too. */
export function Count({ label, figure, least = 0, most = 999, onCount }: {
  label: string;
  figure: number;
  least?: number;
  most?: number;
  onCount: (figure: number) => void;
}) {
  const set = (wanted: number): void => {
    if (Number.isFinite(wanted)) onCount(Math.min(most, Math.max(least, Math.round(wanted))));
  };
  return (
    <div role="group" aria-label={label}>
      <span class={css.label}>{label}</span>
      <span class={css.count}>
        <Act onPress={() => { set(figure - 1); }} isDisabled={figure <= least} spoken={`${label}: one less`}>{"\u2212"}</Act>
        <input class={css.figure} inputMode="numeric" aria-label={label} value={String(figure)} onChange={(event) => { set(Number(event.currentTarget.value)); }} />
        <Act onPress={() => { set(figure + 1); }} isDisabled={figure >= most} spoken={`${label}: one more`}>+</Act>
      </span>
    </div>
  );
}

export function Field({ label, value, onType, wrong, most, type = "text", name, inputMode, autocomplete }: {
  label: string;
  value: string;
  onType: (value: string) => void;
  /** What is wrong with it, in a sentence; it stands under the field. */
  wrong?: string | null | undefined;
  /** The studio takes so many characters; near that it is said how many are left. */
  most?: number;
  type?: "text" | "password" | "search" | "datetime-local" | "date";
  name?: string;
  inputMode?: "text" | "decimal" | "numeric";
  autocomplete?: string;
}) {
  const room = roomLeft(value, most);
  return (
    <label class={css.field}>
      <span class={css.label}>{label}</span>
      <input
        type={type} name={name} value={value} inputMode={inputMode} autocomplete={autocomplete} autocapitalize="none"
        aria-invalid={wrong ? "true" : undefined} onInput={(event) => { onType(event.currentTarget.value); }}
      />
      {room && <span class={css.room} role="status">{room}</span>}
      {wrong && <span class={css.wrong} role="alert">{wrong}</span>}
    </label>
  );
}

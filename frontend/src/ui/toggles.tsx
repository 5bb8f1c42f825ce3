/** Several of a few: each is in or out, with the mark of a choice and not by colour alone. */
import css from "./act.module.css";

export interface ToggleOption {
  value: string;
  words: string;
  note?: string | undefined;
}

export function Toggles({ legend, options, chosen, onToggle }: {
  legend: string;
  options: readonly ToggleOption[];
  chosen: ReadonlySet<string>;
  onToggle: (value: string) => void;
}) {
  return (
    <fieldset class={css.choices}>
      <legend>{legend}</legend>
      {options.map(({ value, words, note }) => (
        <label key={value} class={css.choice}>
          <input class={css.over} type="checkbox" checked={chosen.has(value)} onChange={() => { onToggle(value); }} />
          <svg viewBox="0 0 10 20" width="10" height="20" aria-hidden="true"><path d="M0 0a10 10 0 0 1 0 20z" fill="currentColor" /></svg>
          <span>{words}{note && <span class={css.optionNote}>{note}</span>}</span>
        </label>
      ))}
    </fieldset>
  );
}

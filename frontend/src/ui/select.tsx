/** One of many, where blocks would fill the screen: the phone's own list. */
import css from "./act.module.css";
import type { Option } from "./act";

export function Select({ label, name, options = [], groups = [], chosen, onChoose, none, wrong }: {
  label: string;
  name: string;
  options?: readonly Option<string>[];
  /** Options that stand apart under words of their own. */
  groups?: readonly { label: string; options: readonly Option<string>[] }[];
  chosen: string;
  onChoose: (value: string) => void;
  /** The words of no choice. */
  none: string;
  wrong?: string | null | undefined;
}) {
  return (
    <label class={css.field}>
      <span class={css.label}>{label}</span>
      <select name={name} value={chosen} aria-invalid={wrong ? "true" : undefined} onChange={(event) => { onChoose(event.currentTarget.value); }}>
        <option value="">{none}</option>
        {options.map(asOption)}
        {groups.map((group) => <optgroup key={group.label} label={group.label}>{group.options.map(asOption)}</optgroup>)}
      </select>
      {wrong && <span class={css.wrong} role="alert">{wrong}</span>}
    </label>
  );
}

function asOption({ value, words }: Option<string>) {
  return <option key={value} value={value}>{words}</option>;
}

/** A field of many lines: a table, a letter. */
import css from "./act.module.css";

export function LongField({ label, value, onType, wrong, name, rows = 6, isFigures = false }: {
  label: string;
  value: string;
  onType: (value: string) => void;
  wrong?: string | null | undefined;
  name?: string;
  rows?: number;
  /** Columns that stand under each other: lines are not broken. */
  isFigures?: boolean;
}) {
  return (
    <label class={css.field}>
      <span class={css.label}>{label}</span>
      <textarea
        name={name} rows={rows} value={value} wrap={isFigures ? "off" : "soft"} autocapitalize="none" spellcheck={!isFigures} aria-invalid={wrong ? "true" : undefined}
        onInput={(event) => { onType(event.currentTarget.value); }}
      />
      {wrong && <span class={css.wrong} role="alert">{wrong}</span>}
    </label>
  );
}

/** The usual cautions, where the act happens: each in its first words, and in full behind a tap. */
import { Fact } from "../../ui/seam";
import css from "./cautions.module.css";

/** `Dry clay dust holds silica` of a longer sentence; a short one stays whole. */
export function firstWords(caution: string): string {
  const [first = caution] = caution.split(/[:;.,](?:\s|$)/);
  return first;
}

export function Cautions({ words, label = "care" }: { words: readonly string[]; label?: string }) {
  if (words.length === 0) return null;
  const once = [...new Set(words)];
  return (
    <Fact label={label}>
      <details class={css.details}>
        <summary><span>{once.map(firstWords).join(" · ")}</span></summary>
        {once.map((caution) => <p key={caution}>{caution}</p>)}
      </details>
    </Fact>
  );
}

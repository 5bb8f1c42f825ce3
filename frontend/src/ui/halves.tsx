/** Two halves of equal weight, whose seams do not close: knob against knob. */
import css from "./halves.module.css";

export interface Half {
  word: string;
  lines: readonly string[];
}

export function Halves({ first, second }: { first: Half; second: Half }) {
  return (
    <div class={css.halves}>
      <Story half={first} />
      <span class={css.gap} aria-hidden="true">
        <svg viewBox="0 0 26 26" width="26" height="26">
          <path d="M0 0a13 13 0 0 1 0 26z" fill="currentColor" />
          <path d="M26 0a13 13 0 0 0 0 26z" fill="currentColor" />
        </svg>
      </span>
      <Story half={second} />
    </div>
  );
}

function Story({ half: { word, lines } }: { half: Half }) {
  return (
    <section class={css.half} aria-label={word}>
      <h2 class={css.word}>{word}</h2>
      {lines.filter(Boolean).map((line) => <p key={line} class={css.line}>{line}</p>)}
    </section>
  );
}

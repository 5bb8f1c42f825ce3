import type { JSX } from "preact";
import css from "./natch.module.css";

/** Where a thing stands: a knob wants something, a hollow is done with, knob to knob is two stories. */
export type NatchKind =
  | "past" | "hand" | "today" | "next" | "guess" | "done" | "kept" | "two" | "refused" | "none";

/** The box is 26 high and the seam runs down x = 0; hollows bulge to its left. */
const SHAPES: Record<NatchKind, JSX.Element | null> = {
  past: (
    <>
      <path class={css.solid} d="M0 3a10 10 0 0 1 0 20z" />
      <path class={css.bar} d="M15 2v22" />
    </>
  ),
  hand: <path class={css.solid} d="M0 3a10 10 0 0 1 0 20z" />,
  today: <path class={css.solid} d="M0 3a10 10 0 0 1 0 20z" />,
  next: <path class={css.line} d="M0 0v3a10 10 0 0 1 0 20v3" />,
  guess: <path class={css.dashed} d="M0 0v3a10 10 0 0 1 0 20v3" />,
  done: <path class={css.line} d="M0 0v3a10 10 0 0 0 0 20v3" />,
  kept: <path class={css.dashed} d="M0 0v3a10 10 0 0 0 0 20v3" />,
  two: (
    <>
      <path class={css.solid} d="M0 4a9 9 0 0 1 0 18z" />
      <path class={css.solid} d="M20 4a9 9 0 0 0 0 18z" />
    </>
  ),
  refused: <path class={css.line} d="M0 4h18v18h-18zM0 13h18" />,
  none: null,
};

const BREAKS_SEAM: ReadonlySet<NatchKind> = new Set<NatchKind>(["next", "guess", "done", "kept"]);
const IS_LIVE: ReadonlySet<NatchKind> = new Set<NatchKind>(["past", "hand", "two", "refused"]);

/** The seam of one row with its natch. It is drawn; the row's words say the same. */
export function Natch({ kind }: { kind: NatchKind }) {
  const classes = [css.seam, BREAKS_SEAM.has(kind) ? css.broken : "", IS_LIVE.has(kind) ? css.live : ""];
  return (
    <span class={classes.join(" ")} aria-hidden="true">
      <svg class={css.natch} viewBox="0 0 26 26" width="26" height="26">
        {SHAPES[kind]}
      </svg>
    </span>
  );
}

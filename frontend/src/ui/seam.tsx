/** The seam and what registers on it: block heads, rows and facts, all on the same three columns. */
import type { ComponentChildren } from "preact";
import { Fragment } from "preact";
import { Natch } from "./natch";
import type { NatchKind } from "./natch";
import css from "./seam.module.css";

const classes = (...names: (string | false | undefined)[]): string => names.filter(Boolean).join(" ");

/** A head and the rows under it. An empty block says how many all the same: nought is news. */
export function Block({ name, count, note, children }: {
  name: string;
  count?: number | undefined;
  note?: string | undefined;
  children?: ComponentChildren;
}) {
  return (
    <section aria-label={name}>
      <div class={css.head}>
        <span class={css.left} aria-hidden="true">{count ?? ""}</span>
        <span class={css.mid}><Natch kind="none" /></span>
        <span class={css.right}>
          <h2 class={css.name}>
            {name}
            {count !== undefined && <><span class={css.headCount}>: {count}</span><span class="unseen">: {count}</span></>}
          </h2>
          {note && <span class={css.headNote}>{note}</span>}
        </span>
      </div>
      <ul>{children}</ul>
    </section>
  );
}

/** Facts of one line; on the smallest screens each stands on its own. */
export function Evidence({ words }: { words: string }) {
  const [first, ...rest] = words.split(" · ");
  return (
    <span class={css.evidence}>
      <span>{first}</span>
      {rest.length > 0 && <Fragment><span class={css.dot}> · </span><span>{rest.join(" · ")}</span></Fragment>}
    </span>
  );
}

export function Mark({ mark, noun }: { mark: string; noun?: string | undefined }) {
  return (
    <>
      <span class={classes(css.mark, mark.length > 4 && css.long)}>{mark}</span>
      {noun && <span class={css.noun}>{noun}</span>}
    </>
  );
}

export interface RowProps {
  mark: string;
  noun?: string | undefined;
  natch: NatchKind;
  verdict: string;
  evidence?: string | undefined;
  /** One sentence for who listens instead of looks. */
  spoken: string;
  isLive?: boolean;
  isLarge?: boolean;
  isChosen?: boolean;
  /** The whole row is the target; without it the row only tells. */
  onChoose?: () => void;
  /** A row may be a way to a screen instead. */
  href?: string;
  /** An act inside the row, such as Undo. */
  act?: ComponentChildren;
}

export function Row({ mark, noun, natch, verdict, evidence, spoken, isLive, isLarge, isChosen, onChoose, href, act }: RowProps) {
  return (
    <li class={classes(css.row, isChosen && css.chosen, Boolean(act) && css.withAct)} data-chosen={isChosen ? "" : undefined}>
      {onChoose && (
        <button type="button" class={css.target} aria-current={isChosen ? "true" : undefined} aria-label={spoken} onClick={onChoose} />
      )}
      {href && <a class={css.target} href={href} aria-label={spoken} />}
      <span class={css.left}><Mark mark={mark} noun={noun} /></span>
      <span class={css.mid}><Natch kind={natch} /></span>
      <span class={css.right}>
        <span>
          <span class={classes(css.verdict, isLive && css.isLive, isLarge && css.large)}>{verdict}</span>
          {evidence && <Evidence words={evidence} />}
        </span>
        {act}
      </span>
    </li>
  );
}

/** `settled by | Piet Arrowby, Mon 2 Nov` on the same columns. */
export function Fact({ label, value, note, natch = "none", children }: {
  label: string;
  value?: string | undefined;
  note?: string | undefined;
  natch?: NatchKind;
  children?: ComponentChildren;
}) {
  return (
    <div class={classes(css.grid, css.fact)}>
      <span class={css.left}>{label}</span>
      <span class={css.mid}><Natch kind={natch} /></span>
      <div class={css.right}>
        {value && <span class={css.value}>{value}</span>}
        {note && <Evidence words={note} />}
        {children}
      </div>
    </div>
  );
}

/** The frame every screen stands in: title, one line of state, the body, the tray, the places. */
import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import css from "./frame.module.css";
import bar from "./places.module.css";
import hand from "./tray.module.css";
import { Natch } from "./natch";
import type { NatchKind } from "./natch";

export function Frame({ children }: { children: ComponentChildren }) {
  return <div class={css.frame}>{children}</div>;
}

/** What the browser calls the page, in its tabs and its history: text, whatever is in it. */
function pageTitle(name: string, when: string | undefined): string {
  return [when ? `${name}, ${when}` : name, "Natch"].join(" · ");
}

export function Title({ name, when, acts, children }: { name: string; when?: string | undefined; acts?: ComponentChildren; children?: ComponentChildren }) {
  useEffect(() => { document.title = pageTitle(name, when); }, [name, when]);
  return (
    <header class={css.title}>
      <h1 class={css.name}>{name}</h1>
      {when && <span class={css.when}>{when}</span>}
      {acts && <div class={css.headActs}>{acts}</div>}
      <nav class={css.aside} aria-label="This phone">{children}</nav>
    </header>
  );
}

/** What a screen is asked, above its seam or under it. */
export function Asked({ children }: { children: ComponentChildren }) {
  return <div class={css.asked}>{children}</div>;
}

export function Initials({ initials }: { initials: string }) {
  return <span class={css.initials}>{initials}</span>;
}

/** One line under the title: what is kept here, how old this is. A state, not a fault. */
export function StateLine({ count, natch = "kept", children }: { count?: number | undefined; natch?: NatchKind; children: ComponentChildren }) {
  return (
    <p class={css.line} role="status">
      <span aria-hidden="true">{count ?? ""}</span>
      <Natch kind={count === undefined ? "none" : natch} />
      <span>{count !== undefined && <><b class={css.inline} aria-hidden="true">{count} </b><span class="unseen">{count} </span></>}{children}</span>
    </p>
  );
}

/** What scrolls. `isSeam`: rows on the seam, which runs on to the tray; else plain text and fields. `isWide`: a desk's whole width, as it is. */
export function Body({ isSeam = true, isWide = false, children }: { isSeam?: boolean; isWide?: boolean; children: ComponentChildren }) {
  if (isWide) return <main class={`${css.body ?? ""} ${css.wide ?? ""}`}>{children}</main>;
  return (
    <main class={css.body}>
      {isSeam ? children : <div class={css.plain}>{children}</div>}
      {isSeam && <div class={css.rest} aria-hidden="true" />}
    </main>
  );
}

/** The hand: acts for the chosen thing, above the places. The main act comes first in the markup. */
export function Tray({ mark, markHref, reason, isStack = false, isFree = false, isDead = false, children }: {
  mark?: string | undefined;
  /** The mark may lead to the thing itself. */
  markHref?: string | undefined;
  reason?: string | undefined;
  /** A long main act over two short ones. */
  isStack?: boolean;
  /** The children lay themselves out. */
  isFree?: boolean;
  /** Takes nothing for a moment, without looking any different. */
  isDead?: boolean;
  children: ComponentChildren;
}) {
  return (
    <section class={`${hand.tray ?? ""} ${isDead ? hand.dead ?? "" : ""}`} aria-label={mark ? `What to do with ${mark}` : "What to do"}>
      {(mark ?? reason) && <p class={hand.reason}>{mark && (markHref ? <a href={markHref}>{mark}</a> : <b>{mark}</b>)}<span>{reason}</span></p>}
      <div class={isFree ? undefined : isStack ? hand.stack : hand.acts}>{children}</div>
    </section>
  );
}

/** Acts side by side as in the tray, the main act nearest the thumb, where the tray holds a form. */
export function Pair({ children }: { children: ComponentChildren }) {
  return <div class={hand.acts}>{children}</div>;
}

export interface PlaceLink {
  word: string;
  href: string;
  isHere: boolean;
}

export function PlaceBar({ places }: { places: readonly PlaceLink[] }) {
  return (
    <nav class={bar.places} aria-label="Places">
      {places.map((place) => (
        <a key={place.href} href={place.href} aria-current={place.isHere ? "page" : undefined}>
          {place.isHere && (
            <svg viewBox="0 0 24 12" width="24" height="12" aria-hidden="true"><path d="M0 0a12 12 0 0 0 24 0z" fill="currentColor" /></svg>
          )}
          {place.word}
        </a>
      ))}
    </nav>
  );
}

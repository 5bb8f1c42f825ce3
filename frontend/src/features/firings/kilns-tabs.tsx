import css from "./kilns.module.css";

const TABS = [{ href: "/kilns", words: "Now" }, { href: "/kilns/weeks", words: "Four weeks" }] as const;

export function KilnsTabs({ here }: { here: (typeof TABS)[number]["href"] }) {
  return (
    <nav class={css.tabs} aria-label="Kilns">
      {TABS.map(({ href, words }) => (
        <a key={href} href={href} aria-current={href === here ? "page" : undefined}>
          {words}
          {href === here && <svg viewBox="0 0 22 11" width="22" height="11" aria-hidden="true"><path d="M0 11a11 11 0 0 1 22 0z" fill="currentColor" /></svg>}
        </a>
      ))}
    </nav>
  );
}

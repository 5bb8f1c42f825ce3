/** A photo in a line, and the act that takes one. */
import { useState } from "preact/hooks";
import act from "./act.module.css";
import css from "./photo.module.css";

/** Words, and the camera behind them; a browser without one offers its files. */
export function TakePhoto({ words, isDisabled = false, onTake }: { words: string; isDisabled?: boolean; onTake: (file: File) => void }) {
  return (
    <label class={`${act.act ?? ""} ${css.take ?? ""}`}>
      <input
        class={act.over} type="file" accept="image/*" capture="environment" disabled={isDisabled}
        onChange={({ currentTarget }) => {
          const [file] = currentTarget.files ?? [];
          if (file) onTake(file);
          // Else the same file, taken out and chosen again, changes nothing.
          currentTarget.value = "";
        }}
      />
      {words}
    </label>
  );
}

interface PictureProps {
  address: string;
  /** What it is of, for who listens. */
  spoken: string;
}

/** Small in a line; it leads to the whole photo where there is one. */
export function Thumbnail({ address, spoken, href, isSmall = false }: PictureProps & { href?: string; isSmall?: boolean }) {
  const [missed, miss] = useState<string | null>(null);
  const inside = missed === address
    ? <span>not on this phone</span>
    : <img src={address} alt={href === undefined ? spoken : ""} loading="lazy" onError={() => { miss(address); }} />;
  const style = `${css.thumbnail ?? ""} ${isSmall ? css.small ?? "" : ""}`;
  return href === undefined ? <span class={style}>{inside}</span> : <a class={style} href={href} aria-label={spoken}>{inside}</a>;
}

/** As wide as the screen. */
export function WholePhoto({ address, spoken, onMissing }: PictureProps & { onMissing: () => void }) {
  return <img class={css.whole} src={address} alt={spoken} onError={onMissing} />;
}

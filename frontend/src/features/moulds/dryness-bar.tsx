/** How damp a mould is, on the studio's own limits: hatched as far as its water goes, with the words under their lengths. */
import { percent } from "../../domain/format";
import { useBox } from "../common/use-box";
import { barOf } from "./dryness";
import type { DrynessBarData } from "./dryness";
import css from "./dryness-bar.module.css";

const WORDS = ["dry", "usable", "rest"] as const;

export function DrynessBar({ data }: { data: DrynessBarData }) {
  const { ref, box: { width, rem } } = useBox<HTMLDivElement>();
  const bar = barOf(data, width);
  if (data.fraction === null) return null;
  const [top, height] = [1.6 * rem, 1.125 * rem];
  const spoken = `${percent(data.fraction)} of the water it can hold: ${data.word}. Dry below ${percent(data.dryBelow)}, usable below ${percent(data.usableBelow)}.`;
  return (
    <div class={css.box}>
      <div ref={ref}>
        <svg class={css.picture} viewBox={`0 0 ${String(width)} ${String(top + height + 1.5 * rem)}`} height={top + height + 1.5 * rem} role="img" aria-label={spoken}>
          <defs>
            <pattern id="hatch-bar" patternUnits="userSpaceOnUse" width="5" height="5" patternTransform="rotate(45)"><path class={css.ink} d="M0 0v5" stroke-width="1.6" /></pattern>
          </defs>
          <rect x={0} y={top} width={bar.water} height={height} fill="url(#hatch-bar)" />
          <rect class={css.edge} x={1} y={top} width={width - 2} height={height} />
          {[bar.dry, bar.usable].map((x) => <path key={x} class={css.ink} d={`M${String(x)} ${String(top - 4)}v${String(height + 8)}`} stroke-width="2" />)}
          <path class={css.natch} d={`M${String(bar.water - 8)} ${String(top - 4)}a8 8 0 0 0 16 0z`} />
          <text class={css.figure} x={bar.label} y={top - 0.45 * rem}>{percent(data.fraction)}</text>
          {bar.words.map((x, place) => {
            const word = WORDS[place];
            return <text key={word} class={word === data.word ? css.here : css.word} x={x} y={top + height + 1.15 * rem}>{word}</text>;
          })}
        </svg>
      </div>
    </div>
  );
}

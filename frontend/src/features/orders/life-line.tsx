/** The life line: one strip for each piece on the same days; one sentence under it, and its figures behind a tap. */
import type { OrderPiece, PieceLife } from "../../api/shapes-orders";
import { useZone } from "../common/session";
import { useBox } from "../common/use-box";
import draw from "../../ui/drawing.module.css";
import { drawLives } from "./life-geometry";
import type { Bar, LifePicture, Strip } from "./life-geometry";
import { asideWords, lifeFigures, lifeSentence } from "./life-words";

/** Where there is this much room, each strip has its words beside it. [rem] */
const WIDE_REM = 40;
const ASIDE_REM = 11.5;

export function LifeLine({ lives, pieces, now }: { lives: readonly PieceLife[]; pieces: readonly OrderPiece[]; now: Date }) {
  const zone = useZone();
  const { ref, box } = useBox<HTMLDivElement>();
  const isWide = box.width > WIDE_REM * box.rem;
  const picture = drawLives(lives, { ...box, now, zone, aside: isWide ? ASIDE_REM * box.rem : 0 });
  const asides = new Map(lives.map((life) => [life.id, asideWords(life, pieces.find((piece) => piece.id === life.id), now)]));
  return (
    <div class={draw.box}>
      <div ref={ref}>{picture && <Picture picture={picture} asides={isWide ? asides : null} />}</div>
      <p class={draw.said}>{lifeSentence(lives, now)}</p>
      <Figures lives={lives} now={now} />
    </div>
  );
}

function Picture({ picture, asides }: { picture: LifePicture; asides: ReadonlyMap<string, string> | null }) {
  const { width, height, top, bottom, nowX, strips, thick } = picture;
  return (
    <svg class={draw.picture} viewBox={`0 0 ${String(width)} ${String(height)}`} height={height} role="img" aria-label="Where each piece stood, day by day; the figures stand in the table under it.">
      <defs>
        <pattern id="life-hatch" patternUnits="userSpaceOnUse" width="5" height="5" patternTransform="rotate(45)"><path class={draw.hatch} d="M0 0v5" /></pattern>
      </defs>
      {picture.weeks.map(({ x, words }) => (
        <g key={x}>
          <path class={draw.grid} d={`M${String(x)} ${String(top)}V${String(bottom)}`} />
          <text x={x + 4} y={top - 6}>{words}</text>
        </g>
      ))}
      {strips.map((strip) => (
        <g key={strip.id}>
          <text class={draw.mark} x={0} y={strip.y}>{strip.mark}</text>
          <StripDrawing strip={strip} thick={thick} />
          {asides && <text class={draw.aside} x={picture.asideX} y={strip.y}>{asides.get(strip.id)}</text>}
        </g>
      ))}
      <path class={draw.now} d={`M${String(nowX)} ${String(top)}V${String(bottom)}`} />
      <path class={draw.natch} d={`M${String(nowX - 7)} ${String(top - 1)}a7 7 0 0 0 14 0z`} />
      <text class={draw.strong} x={nowX + 10} y={top - 6}>now</text>
    </svg>
  );
}

function StripDrawing({ strip: { y, bars, cross, end, ahead }, thick }: { strip: Strip; thick: number }) {
  return (
    <>
      {bars.map((bar) => <BarDrawing key={`${bar.kind}${String(bar.from)}`} bar={bar} y={y} thick={thick} />)}
      {cross !== null && <path class={draw.cross} d={`M${String(cross - 7)} ${String(y - thick / 2 - 7)}l14 14m0-14l-14 14`} />}
      {end !== null && <path class={draw.line} d={`M${String(end)} ${String(y - thick)}v${String(thick)}m-5-5l5 5l-5 5`} />}
      {ahead !== null && <path class={draw.ahead} d={`M${String(ahead.from)} ${String(y - 1)}H${String(ahead.to)}`} />}
    </>
  );
}

function BarDrawing({ bar: { kind, from, to }, y, thick }: { bar: Bar; y: number; thick: number }) {
  const top = y - thick;
  const box = { x: from, y: top, width: Math.max(1, to - from), height: thick };
  switch (kind) {
    case "mould":
      return <rect class={draw.solid} {...box} />;
    case "out":
      return <rect class={draw.line} x={from + 1} y={top + 1} width={Math.max(1, to - from - 1)} height={thick - 2} />;
    case "open":
      return <rect fill="url(#life-hatch)" {...box} />;
    case "covered":
      return <><rect fill="url(#life-hatch)" {...box} /><path class={draw.line} d={`M${String(from)} ${String(top)}H${String(to)}`} /></>;
    case "waiting":
      return <path class={draw.line} d={`M${String(from)} ${String(y - 1)}H${String(to)}`} />;
    case "kiln":
      return <path class={draw.solid} d={arch(from, Math.max(to, from + 8), y, thick * 1.25)} />;
  }
}

/** The kiln's arch: straight sides under a round crown. */
function arch(from: number, to: number, y: number, high: number): string {
  const radius = Math.min((to - from) / 2, high / 2);
  return `M${String(from)} ${String(y)}V${String(y - high + radius)}q0 ${String(-radius)} ${String(radius)} ${String(-radius)}H${String(to - radius)}q${String(radius)} 0 ${String(radius)} ${String(radius)}V${String(y)}z`;
}

function Figures({ lives, now }: { lives: readonly PieceLife[]; now: Date }) {
  const zone = useZone();
  return (
    <details class={draw.details}>
      <summary>as figures</summary>
      <table class={draw.table}>
        <thead><tr><th scope="col">piece</th><th scope="col">where it stood</th></tr></thead>
        <tbody>
          {lifeFigures(lives, { now, zone }).map(({ id, mark, spans }) => (
            <tr key={id}>
              <th scope="row"><a href={`/pieces/${id}`}>{mark}</a></th>
              <td><ol>{spans.map((words) => <li key={words}>{words}</li>)}</ol></td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

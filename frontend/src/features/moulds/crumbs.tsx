/** Pieces to look over for crumbs of plaster: what was pressed last, by its marks. */
import type { CrumbCheck } from "../../api/shapes-moulds";
import { dayAndClock } from "../../domain/clock";
import { count, upperFirst } from "../../domain/format";
import { Block, Row } from "../../ui/seam";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import css from "./mould.module.css";

export function CrumbCheckRows({ found }: { found: CrumbCheck }) {
  const zone = useZone();
  const now = useNow();
  const rows = found.rows.flatMap(({ pressed_at, pieces }) => pieces.map((piece) => ({ piece, at: dayAndClock(new Date(pressed_at), now, zone) })));
  if (rows.length === 0) return null;
  return (
    <Block name="Look over for crumbs" count={rows.length} note={`from generation ${String(found.generation)} · plaster pops out after firing`}>
      {rows.map(({ piece, at }) => (
        <Row
          key={`${piece.id} ${at}`} mark={piece.mark} noun={piece.noun} natch="hand" href={`/pieces/${piece.id}`}
          verdict={upperFirst(piece.state_words)} evidence={`pressed ${at}`}
          spoken={`Look over ${piece.noun} ${piece.mark}, pressed ${at}, ${piece.state_words}`}
        />
      ))}
    </Block>
  );
}

/** The same in one line, where a new casting or a chip is being told. */
export function CrumbCheckLine({ found }: { found: CrumbCheck | null }) {
  const pieces = [...new Map((found?.rows ?? []).flatMap((row) => row.pieces).map((piece) => [piece.id, piece])).values()];
  if (found === null || pieces.length === 0) return <p>Look over what was pressed last: crumbs of plaster pop out after firing.</p>;
  return (
    <div>
      <p>{`Look over ${count(pieces.length, "piece", "pieces")} from generation ${String(found.generation)}: crumbs of plaster pop out after firing.`}</p>
      <ul class={css.marks}>
        {pieces.map((piece) => <li key={piece.id}><a href={`/pieces/${piece.id}`}>{piece.mark}</a></li>)}
      </ul>
    </div>
  );
}

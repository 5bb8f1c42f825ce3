/** Each line of an order: its counts in sets, what one set is, and where its pieces are. */
import type { OrderLine, OrderPiece, Outlook } from "../../api/shapes-orders";
import type { CoverState } from "../../api/shapes-pieces";
import { count, upperFirst } from "../../domain/format";
import { StageMark } from "../../ui/marks";
import { Block, Fact } from "../../ui/seam";
import { COVERS, markOf } from "../pieces/stage";
import css from "./order.module.css";
import { setWords } from "./together";

export function LineBlock({ line, outlook }: { line: OrderLine; outlook: Outlook | null }) {
  return (
    <Block name={upperFirst(line.what)} note={count(line.pieces.length, "piece", "pieces")}>
      <li><Counts line={line} /></li>
      <li><Fact label="one set" value={upperFirst(setWords(line))} note={recipeNote(line)} /></li>
      {outlook && outlook.press.words !== "" && <li><Fact label="to press" natch={outlook.press.more ? "next" : "none"} value={upperFirst(outlook.press.words)} note={pressNote(outlook)} /></li>}
      {line.stages.map(({ state, words, count: figure }) => (
        <li key={words}>
          <Fact label={String(figure)}>
            <span class={css.stage}><StageMark name={markOf(state, coverOf(line, state))} /><b>{upperFirst(words)}</b></span>
            <Marks pieces={line.pieces.filter((piece) => piece.state === state)} />
          </Fact>
        </li>
      ))}
      {line.pieces.length === 0 && <li><Fact label="" natch="done" value="No piece yet." note="Plan some, or put one in." /></li>}
    </Block>
  );
}

function recipeNote({ recipe }: OrderLine): string | undefined {
  const designs = recipe.filter((role) => role.design_name !== "").map((role) => role.design_name);
  return designs.length > 0 ? designs.join(" · ") : "whatever stands in the line counts";
}

/** The last day is news only while something has to be pressed. */
function pressNote({ latest_press, press }: Outlook): string | undefined {
  if (press.more === 0) return undefined;
  return latest_press.find((press) => press.confidence === 0.8)?.words;
}

/** Drawn under cover only where every one of them is. */
function coverOf(line: OrderLine, state: string): CoverState {
  const covers = line.pieces.filter((piece) => piece.state === state).map((piece) => COVERS.find((cover) => cover.value === piece.cover)?.value ?? "open");
  return covers.find((cover) => cover === "open") ?? covers[0] ?? "open";
}

/** Whole sets but where pieces are named. */
function Counts({ line: { counts, wanted_sets } }: { line: OrderLine }) {
  const figures: [number, string][] = [
    [wanted_sets, "wanted"], [counts.alive, "alive"], [counts.finished, "finished"], [counts.delivered, "handed over"],
    [counts.planned, "planned"], [counts.in_doubt, "in doubt"], [counts.lost_pieces, "lost"], [counts.damaged_pieces, "damaged"],
  ];
  const always = new Set(["wanted", "alive", "finished", "lost", "in doubt"]);
  return (
    <Fact label="sets">
      <dl class={css.counts}>
        {figures.filter(([figure, words]) => figure > 0 || always.has(words)).map(([figure, words]) => (
          <div key={words}><dt>{words}</dt><dd>{figure}</dd></div>
        ))}
      </dl>
    </Fact>
  );
}

export function Marks({ pieces }: { pieces: readonly Pick<OrderPiece, "id" | "mark" | "is_damaged" | "clash_id">[] }) {
  return (
    <span class={css.marks}>
      {pieces.map(({ id, mark, is_damaged, clash_id }) => (
        <a key={id} href={`/pieces/${id}`}>{mark}{clash_id !== null ? ", two stories" : is_damaged ? ", damaged" : ""}</a>
      ))}
    </span>
  );
}

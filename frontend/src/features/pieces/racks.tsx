/** Where everything stands: search, what nobody touched for a week, and the places with what they hold. */
import { useState } from "preact/hooks";
import type { PieceBrief } from "../../api/shapes-pieces";
import { count, upperFirst } from "../../domain/format";
import { Act, Field } from "../../ui/act";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import css from "./racks.module.css";
import { findPieces, pieceLineWords, placeLines, untouched, UNTOUCHED_DAYS } from "./racks-view";
import { useRacks } from "./use-racks";
import type { Racks } from "./use-racks";

const TITLE = "Racks";
const FIRST = 3;
const MOST_FOUND = 60;

export function RacksScreen() {
  const screen = useRacks();
  return <WhenHeard title={TITLE} screen={screen}>{(value, heardAt) => <Ready racks={value} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ racks: { pieces, places }, heardAt }: { racks: Racks; heardAt: Date | null }) {
  const [letters, type] = useState("");
  const isSearching = letters.trim() !== "";
  return (
    <Screen title={TITLE} when={count(pieces.length, "piece", "pieces")} heardAt={heardAt}>
      <div class={css.search}><Field label="Find by number, maker, shelf, stage" type="search" name="q" value={letters} onType={type} /></div>
      {isSearching ? <Found pieces={findPieces(pieces, letters)} /> : (
        <>
          <Untouched pieces={pieces} />
          <Block name="Places" count={placeLines(pieces, places).length}>
            {placeLines(pieces, places).map((place) => (
              <Row
                key={place.id} mark={String(place.count)} natch="none" verdict={place.name} evidence={place.evidence}
                href={`/racks/${place.id}`} spoken={`${place.name}, ${count(place.count, "piece", "pieces")}: ${place.evidence}`}
              />
            ))}
          </Block>
          {pieces.length === 0 && <Fact label="" natch="done" value="Nothing stands about." note="What is pressed comes here once it is put down." />}
        </>
      )}
    </Screen>
  );
}

function Found({ pieces }: { pieces: readonly PieceBrief[] }) {
  const now = useNow();
  return (
    <Block name="Found" count={pieces.length}>
      {pieces.slice(0, MOST_FOUND).map((piece) => <Row key={piece.id} mark={piece.mark} noun={piece.noun} natch={piece.clash_id ? "two" : "none"} href={`/pieces/${piece.id}`} {...pieceLineWords(piece, now)} />)}
      {pieces.length === 0 && <li><Fact label="" natch="done" value="Nothing by that name." note="Look under the foot for its number, or try the shelf." /></li>}
      <li class={css.more}><Act href="/find">Find what is no piece</Act></li>
    </Block>
  );
}

function Untouched({ pieces }: { pieces: readonly PieceBrief[] }) {
  const now = useNow();
  const [isWhole, setWhole] = useState(false);
  const all = untouched(pieces, now);
  if (all.length === 0) return null;
  return (
    <Block name={`Not touched for ${String(UNTOUCHED_DAYS)} days`} count={all.length}>
      {(isWhole ? all : all.slice(0, FIRST)).map((piece) => {
        const words = pieceLineWords(piece, now, { isTouch: true });
        return <Row key={piece.id} mark={piece.mark} noun={piece.noun} natch="hand" href={`/pieces/${piece.id}`} {...words} verdict={upperFirst(words.verdict)} />;
      })}
      {!isWhole && all.length > FIRST && <li class={css.more}><Act onPress={() => { setWhole(true); }}>All {all.length}</Act></li>}
    </Block>
  );
}

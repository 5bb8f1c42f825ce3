/** One place and what stands on it; many are moved or covered by one act, with those ticked off left alone. */
import type { PieceBrief } from "../../api/shapes-pieces";
import { count } from "../../domain/format";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { PlaceAir } from "./place-air";
import { PlaceChoice } from "./place-choice";
import css from "./racks.module.css";
import { countsOf, pieceLineWords } from "./racks-view";
import { COVERS } from "./stage";
import { useRacks, useShelf } from "./use-racks";
import type { Racks, Shelf } from "./use-racks";

const HOME = "/racks";

export function ShelfScreen({ id = "" }: { id?: string }) {
  const screen = useRacks();
  return <WhenHeard title="Place" within={HOME} screen={screen}>{(value, heardAt) => <Ready key={id} id={id} racks={value} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ id, racks, heardAt }: { id: string; racks: Racks; heardAt: Date | null }) {
  const now = useNow();
  const pieces = racks.pieces.filter((piece) => (piece.place?.id ?? "none") === id);
  const place = racks.places.find((one) => one.id === id);
  const name = place?.name ?? pieces[0]?.place?.name ?? "No place said";
  const shelf = useShelf(pieces, name, racks.seq);
  if (shelf.many === "move" && shelf.isAsking) {
    return (
      <Screen title={name} when={count(shelf.ticked.size, "piece", "pieces")} within={HOME} isSeam={false} tray={<Tray><Act onPress={() => { shelf.begin(null); }}>Not now</Act></Tray>}>
        <PlaceChoice hereId={id} onChoose={shelf.moveTo} />
      </Screen>
    );
  }
  return (
    <Screen title={name} when={countsOf(pieces)} within={HOME} heardAt={heardAt} tray={<ShelfTray shelf={shelf} pieces={pieces} />}>
      <SaidLine mark="" saying={shelf.saying} />
      <Block name={shelf.many === null ? "Here" : "Tick off those left alone"} count={shelf.many === null ? pieces.length : shelf.ticked.size}>
        {pieces.map((piece) => <ShelfRow key={piece.id} piece={piece} shelf={shelf} now={now} />)}
      </Block>
      {pieces.length === 0 && <Fact label="" natch="done" value="Nothing stands here." />}
      {place && shelf.many === null && <PlaceAir place={place} />}
    </Screen>
  );
}

function ShelfRow({ piece, shelf, now }: { piece: PieceBrief; shelf: Shelf; now: Date }) {
  const words = pieceLineWords(piece, now, { isPlaced: false });
  const { mark, noun, id } = piece;
  if (shelf.many === null) return <Row mark={mark} noun={noun} natch={piece.clash_id ? "two" : "none"} href={`/pieces/${id}`} {...words} />;
  if (shelf.many === "cover" && !shelf.mayCover(piece)) return <Row mark={mark} noun={noun} natch="none" {...words} verdict="Left alone" evidence={piece.mine ? "not drying" : `${piece.maker?.first_name ?? "somebody"}’s`} />;
  const isTicked = shelf.ticked.has(id);
  const verdict = isTicked ? words.verdict : "Left alone";
  return (
    <Row
      mark={mark} noun={noun} natch={isTicked ? "today" : "done"} verdict={verdict} evidence={words.evidence} isChosen={isTicked}
      spoken={`${mark}, ${isTicked ? "with the others" : "left alone"}: ${words.spoken}`} onChoose={() => { shelf.toggle(id); }}
    />
  );
}

function ShelfTray({ shelf, pieces }: { shelf: Shelf; pieces: readonly PieceBrief[] }) {
  const { many, ticked, saying } = shelf;
  if (pieces.length === 0) return null;
  if (many === null) {
    const coverable = pieces.filter(shelf.mayCover).length;
    return (
      <Tray isDead={saying.isDead}>
        <MainAct onPress={() => { shelf.begin("move"); }}>Move…</MainAct>
        <Act isDisabled={coverable === 0} onPress={() => { shelf.begin("cover"); }}>Cover…</Act>
      </Tray>
    );
  }
  const notNow = <Act onPress={() => { shelf.begin(null); }}>Not now</Act>;
  if (many === "cover" && shelf.isAsking) {
    return (
      <Tray reason={count(ticked.size, "piece", "pieces")} isFree>
        <div class={css.grid}>
          {COVERS.map((one) => <Act key={one.value} onPress={() => { shelf.cover(one.value); }}>{one.words}</Act>)}
          <div class={css.whole}>{notNow}</div>
        </div>
      </Tray>
    );
  }
  return (
    <Tray isDead={saying.isDead}>
      <MainAct isDisabled={ticked.size === 0} onPress={shelf.ask}>{many === "move" ? "Move" : "Cover"} {ticked.size}</MainAct>
      {notNow}
    </Tray>
  );
}

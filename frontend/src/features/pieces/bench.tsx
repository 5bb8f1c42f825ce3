/** The first screen: what wants a hand now, and the hand to answer with. */
import { useEffect, useRef } from "preact/hooks";
import type { BenchAnswer } from "../../api/shapes";
import { clock, titleTime } from "../../domain/clock";
import { basis } from "../../domain/format";
import { SmallAct } from "../../ui/act";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useAhead } from "../common/use-ahead";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { aheadOf } from "./bench-ahead";
import { BenchTray } from "./bench-tray";
import type { Line } from "./bench-overlay";
import { wordsOf } from "./bench-words";
import { useBench, useBenchScreen } from "./use-bench";
import type { Bench } from "./use-bench";
import { useKeys } from "./use-keys";

const TITLE = "Bench";
/** Windows reckoned longer ago than this say when. [ms] */
const OLD_MS = 60 * 60_000;

export function BenchScreen() {
  const screen = useBenchScreen();
  useAhead(screen.state === "ready" ? aheadOf(screen.value) : [], screen.state === "ready" && screen.isFresh);
  return <WhenHeard title={TITLE} screen={screen}>{(value, heardAt) => <Ready snapshot={value} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ snapshot, heardAt }: { snapshot: BenchAnswer; heardAt: Date | null }) {
  const bench = useBench(snapshot);
  const zone = useZone();
  const now = useNow();
  const { view } = bench;
  useKeys(bench);
  useFollow(bench);

  const reckonedAt = snapshot.forecast_at === null ? null : new Date(snapshot.forecast_at);
  const isOld = reckonedAt !== null && now.getTime() - reckonedAt.getTime() > OLD_MS;
  const note = `${basis(snapshot.confidence)}${isOld ? ` · reckoned ${clock(reckonedAt, zone)}` : ""}`;
  const lines = (all: readonly Line[]) => all.map((line) => <BenchLine key={line.key} line={line} bench={bench} now={now} zone={zone} />);
  const waiting = view.lookNow.filter((line) => line.said === null).length;
  return (
    <Screen title={TITLE} when={titleTime(now, zone)} heardAt={heardAt} tray={<BenchTray bench={bench} />}>
      <p class="unseen" role="status">{bench.lastSaid && wordsOf(bench.lastSaid, now, zone).spoken}</p>
      <Block name="Look now" count={waiting} note={view.lookNow.length > 0 ? note : undefined}>{lines(view.lookNow)}</Block>
      {view.lookNow.length === 0 && <Nothing bench={bench} />}
      {view.coverNow.length > 0 && <Block name="Cover now" count={view.coverNow.length}>{lines(view.coverNow)}</Block>}
      <Block name="Later today" count={view.laterToday.length}>{lines(view.laterToday)}</Block>
      <Block name="Join today" count={view.joinToday.length}>{lines(view.joinToday)}</Block>
      <Block name="Press next" count={view.pressNext.filter((line) => line.row.may_press).length}>{lines(view.pressNext)}</Block>
      {view.later.length > 0 && <Block name="Later" count={view.later.length}>{lines(view.later)}</Block>}
      {view.drying.length > 0 && <Block name="Drying" count={view.drying.length}>{lines(view.drying)}</Block>}
      {view.readyForBisque.length > 0 && <Block name="Ready for bisque" count={view.readyForBisque.length}>{lines(view.readyForBisque)}</Block>}
    </Screen>
  );
}

/** Keep the chosen row of the first block in sight as the hand goes down it; never scroll an Undo away, nor at the start. */
function useFollow({ view, chosen }: Bench): void {
  const isFollowing = useRef(false);
  const isInHand = chosen !== null && view.lookNow.some((line) => line.key === chosen.key);
  useEffect(() => {
    if (isFollowing.current && isInHand) document.querySelector("[data-chosen]")?.scrollIntoView({ block: "nearest" });
    isFollowing.current = true;
  }, [chosen?.key, isInHand]);
}

/** Empty is news too: a hollow, one sentence, and what could be pressed. */
function Nothing({ bench: { view } }: { bench: Bench }) {
  const isFilled = view.laterToday.length + view.later.length > 0;
  const first = view.pressNext.find((line) => line.row.may_press)?.row;
  const next = first ? `Press next: ${first.set.label}${first.dryness.word === "dry" ? " is dry" : ""}.` : undefined;
  return <Fact label="" natch="done" value={isFilled ? "Nothing to look at now." : "No moulds filled."} note={next} />;
}

function BenchLine({ line, bench, now, zone }: { line: Line; bench: Bench; now: Date; zone: string }) {
  const words = wordsOf(line, now, zone);
  const { said } = line;
  if (said !== null) {
    const undo = bench.recentKeys.has(line.key) && (
      <SmallAct spoken={`Undo: ${words.spoken}`} onPress={() => { bench.undo(said); }}>Undo</SmallAct>
    );
    // Once it is not to be undone here any more, its own screen goes on: to join what is out.
    return undo || line.kind === "mould" ? <Row {...words} act={undo} /> : <Row {...words} href={`/pieces/${line.row.piece.id}`} />;
  }
  if (line.kind === "piece" && line.row.clash_id !== null) return <Row {...words} href={`/clashes/${line.row.clash_id}`} />;
  if (line.kind === "piece" && line.row.part === null && !bench.view.coverNow.includes(line)) return <Row {...words} href={`/pieces/${line.row.piece.id}`} />;
  return <Row {...words} isChosen={bench.chosen?.key === line.key} onChoose={() => { bench.choose(line); }} />;
}

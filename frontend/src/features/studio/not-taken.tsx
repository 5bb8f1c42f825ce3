/** What the studio did not take: the verdict names the thing, then why, what was asked as typed, where it is now, what to do. */
import { dayAndClock } from "../../domain/clock";
import { upperFirst } from "../../domain/format";
import type { KeptAct } from "../../offline/kept-act";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Fact, Mark } from "../../ui/seam";
import { Standing } from "../../ui/standing";
import { AskedText, useAsking } from "../common/ask-person";
import { KeptPhotos } from "../common/photos";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useDegrees } from "../common/use-degrees";
import { useNow } from "../common/use-now";
import { askingText, refusedLoad, whomToAsk } from "../firings/refused-load";
import { RefusedLoadFacts } from "../firings/refused-load-facts";
import { useInstead } from "../firings/use-instead";
import { markOf, PieceNow } from "./not-taken-facts";
import { useNotTaken } from "./use-not-taken";

export function NotTakenScreen() {
  const { first, count, isOutOfOrder, pinOf, askAgain, letGo } = useNotTaken();
  const instead = useInstead(first);
  const load = first && refusedLoad(first);
  const whom = load && whomToAsk(load);
  const letter = first && load ? askingText(first, load, location.origin) : "";
  const asking = useAsking(letter);
  if (!first) {
    return (
      <Screen title="Not taken" tray={<Tray><MainAct href="/bench">To the bench</MainAct></Tray>}>
        <Fact label="" natch="done" value="Everything was taken." note="Nothing on this phone waits for you." />
      </Screen>
    );
  }
  const tray = (
    <Tray isStack>
      {instead ? <MainAct onPress={instead.go}>{instead.words}</MainAct> : <MainAct onPress={askAgain}>{pinOf !== null ? `${pinOf}’s PIN` : isOutOfOrder ? "It did happen" : "Ask again"}</MainAct>}
      <Act onPress={letGo}>Let it go</Act>
      {whom !== null ? <Act onPress={asking.ask}>{`Ask ${whom}`}</Act> : instead ? <Act onPress={askAgain}>Ask again</Act> : <Act href={first.about["piece_id"] ? `/pieces/${first.about["piece_id"]}` : "/bench"}>{first.about["piece_id"] ? "Open it" : "Later"}</Act>}
    </Tray>
  );
  return (
    <Screen title="Not taken" when={`1 of ${String(count)}`} tray={tray}>
      <AskedText text={letter} asking={asking} />
      <Parked key={first.id} act={first} />
    </Screen>
  );
}

function Parked({ act }: { act: KeptAct }) {
  const say = useDegrees();
  const zone = useZone();
  const now = useNow();
  const { mark, asked } = markOf(act);
  const { problem } = act;
  const load = refusedLoad(act);
  const at = problem?.facts["settled_at"] ?? problem?.facts["at"];
  const by = load ? null : problem?.facts["by"] ?? problem?.facts["ask"];
  return (
    <>
      <Standing drawing={mark && <Mark mark={mark} />} natch="refused" verdict={load?.verdict ?? problem?.title ?? "Not taken"} evidence={say(problem?.detail ?? "") || "It gave no reason."} />
      {typeof by === "string" && <Fact label="by" value={by} note={typeof at === "string" ? dayAndClock(new Date(at), now, zone) : undefined} />}
      {load && <RefusedLoadFacts said={load} now={now} zone={zone} />}
      {problem?.errors.map((error) => <Fact key={error.pointer} label={error.pointer.replace(/^#\//, "").replaceAll("_", " ")} natch="refused" value={say(error.detail)} />)}
      <Fact label="you asked" value={upperFirst(asked)} note={`${dayAndClock(new Date(act.made_at), now, zone)} · kept as typed`} />
      {act.photo && <KeptPhotos acts={[act]} />}
      {act.about["piece_id"] && <PieceNow pieceId={act.about["piece_id"]} now={now} zone={zone} />}
    </>
  );
}

import { dayAndClock } from "../../domain/clock";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { useNotTaken } from "./use-not-taken";

export function NotTakenScreen() {
  const { first, count, isOutOfOrder, askAgain, letGo } = useNotTaken();
  const zone = useZone();
  const now = useNow();
  if (!first) {
    return (
      <Screen title="Not taken" tray={<Tray><MainAct href="/bench">To the bench</MainAct></Tray>}>
        <Fact label="" natch="done" value="Everything was taken." note="Nothing on this phone waits for you." />
      </Screen>
    );
  }
  const tray = (
    <Tray isStack>
      <MainAct onPress={askAgain}>{isOutOfOrder ? "It did happen" : "Ask again"}</MainAct>
      <Act onPress={letGo}>Let it go</Act>
      <Act href="/bench">Later</Act>
    </Tray>
  );
  return (
    <Screen title="Not taken" when={`1 of ${String(count)}`} tray={tray}>
      <Block name={first.problem?.title ?? "Not taken"} />
      <Fact label="the studio" natch="refused" value={first.problem?.detail || "It gave no reason."} />
      {first.problem?.errors.map((error) => <Fact key={error.pointer} label={error.pointer.replace(/^#\//, "")} value={error.detail} />)}
      <Fact label="you asked" value={first.words} note={`${dayAndClock(new Date(first.made_at), now, zone)} · kept as typed`} />
    </Screen>
  );
}

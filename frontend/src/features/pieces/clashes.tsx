import type { Page } from "../../api/pages";
import type { ClashRow } from "../../api/shapes-pieces";
import { dayAndClock } from "../../domain/clock";
import { MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { useScreen } from "../common/use-screen";
import { WhenHeard } from "../common/when-heard";
import { whyTwo } from "./clash-words";

const TITLE = "Two stories";

/** Everything told twice that does not agree. */
export function ClashesScreen() {
  const zone = useZone();
  const now = useNow();
  const screen = useScreen<Page<ClashRow>>("clashes/?state=open");
  return (
    <WhenHeard title={TITLE} screen={screen}>
      {({ results }, heardAt) => {
        const tray = results[0] ? <Tray><MainAct href={`/clashes/${results[0].id}`}>{results[0].subject.mark}: say which</MainAct></Tray> : undefined;
        return (
          <Screen title={TITLE} heardAt={heardAt} tray={tray}>
            <Block name="Waiting" count={results.length}>
              {results.map((clash) => (
                <Row
                  key={clash.id} mark={clash.subject.mark} noun={clash.subject.noun} natch="two" href={`/clashes/${clash.id}`}
                  verdict={clash.acts.map((act) => act.words).join(", or ")} evidence={`${whyTwo(clash.acts)} · since ${dayAndClock(new Date(clash.opened_at), now, zone)}`}
                  spoken={`${clash.subject.mark}, two stories: ${clash.acts.map((act) => `${act.member.first_name} says ${act.words}`).join("; ")}`}
                />
              ))}
            </Block>
            {results.length === 0 && <Fact label="" natch="done" value="All stories agree." />}
          </Screen>
        );
      }}
    </WhenHeard>
  );
}

import { dayAndClock } from "../../domain/clock";
import { MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { whyTwo } from "./clash-words";
import { clashLink, useOpenClashes } from "./use-clash";

/** Everything told twice that does not agree, of pieces and of loads. */
export function ClashesScreen() {
  const zone = useZone();
  const now = useNow();
  const { rows, heardAt, isHeard } = useOpenClashes();
  const tray = rows[0] ? <Tray><MainAct href={clashLink(rows[0])}>{rows[0].subject.mark}: say which</MainAct></Tray> : undefined;
  return (
    <Screen title="Two stories" heardAt={heardAt} tray={tray}>
      <Block name="Waiting" count={rows.length}>
        {rows.map((clash) => (
          <Row
            key={clash.id} mark={clash.subject.mark} noun={clash.subject.noun} natch="two" href={clashLink(clash)}
            verdict={clash.acts.map((act) => act.words).join(", or ")} evidence={`${whyTwo(clash.acts)} · since ${dayAndClock(new Date(clash.opened_at), now, zone)}`}
            spoken={`${clash.subject.mark}, two stories: ${clash.acts.map((act) => `${act.member.first_name} says ${act.words}`).join("; ")}`}
          />
        ))}
      </Block>
      {rows.length === 0 && <Fact label="" natch={isHeard ? "done" : "next"} value={isHeard ? "All stories agree." : "still asking"} />}
    </Screen>
  );
}

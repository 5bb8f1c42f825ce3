/** Ware that waits for a kiln, by kind and cone, in the order of the studio's rule. */
import { Tray } from "../../ui/frame";
import { MainAct } from "../../ui/act";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { groupTitle, queueRowWords, waitingCount } from "./queue-words";
import { useQueue } from "./use-kilns";

export function WaitingWareScreen() {
  const now = useNow();
  const zone = useZone();
  const queue = useQueue();
  return (
    <Screen title="Waiting" when={queue ? waitingCount(queue.groups) : undefined} within="/kilns" tray={<Tray><MainAct href="/kilns">To the kilns</MainAct></Tray>}>
      {queue === null && <Fact label="" natch="next" value="Asking" note="What waits is known once the studio is heard." />}
      {queue !== null && <Fact label="the rule" note={queue.rule} />}
      {queue?.groups.map((group) => (
        <Block key={`${group.kind}${group.cone}`} name={groupTitle(group)} count={group.rows.length}>
          {group.rows.map((row) => {
            const { verdict, evidence, spoken } = queueRowWords(row, now, zone);
            return <Row key={row.piece.id} mark={row.piece.mark} noun={row.piece.noun} natch={row.dry_evidence.ok ? "next" : "guess"} verdict={verdict} evidence={evidence} spoken={spoken} href={`/pieces/${row.piece.id}`} />;
          })}
        </Block>
      ))}
      {queue?.groups.length === 0 && <Fact label="" natch="done" value="Nothing waits for a kiln." note="Ware comes here once it is called bone dry." />}
    </Screen>
  );
}

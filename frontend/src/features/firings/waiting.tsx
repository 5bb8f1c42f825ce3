/** Ware that waits for a kiln, by kind and cone, in the order of the studio's rule; and whose ware gets a layer that is left. */
import { useState } from "preact/hooks";
import type { QueueGroup } from "../../api/shapes-firings";
import { joinFacts } from "../../domain/format";
import { Field, MainAct } from "../../ui/act";
import { Asked, Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { useRested } from "../common/use-rested";
import { groupTitle, layerWords, queueRowWords, roomOf, waitingCount } from "./queue-words";
import { useQueue } from "./use-kilns";

const NO_ROOM = "Litres above 0, such as 12 or 4.5.";

export function WaitingWareScreen() {
  const [typed, type] = useState("");
  const room_l = roomOf(useRested(typed));
  const isRoom = room_l === null || room_l > 0;
  const queue = useQueue(isRoom ? room_l : null);
  return (
    <Screen title="Waiting" when={queue ? waitingCount(queue.groups) : undefined} within="/kilns" tray={<Tray><MainAct href="/kilns">To the kilns</MainAct></Tray>}>
      <Asked><Field label="Room of a layer that is left, litres: who gets it?" name="room_l" inputMode="decimal" value={typed} onType={type} wrong={isRoom ? null : NO_ROOM} /></Asked>
      {queue === null && <Fact label="" natch="next" value="Asking" note="What waits is known once the studio is heard." />}
      {queue !== null && <Fact label="the rule" note={queue.rule} />}
      {queue?.groups.map((group) => <Waits key={`${group.kind}${group.cone}`} group={group} />)}
      {queue?.groups.length === 0 && <Fact label="" natch="done" value="Nothing waits for a kiln." note="Ware comes here once it is called bone dry." />}
    </Screen>
  );
}

function Waits({ group }: { group: QueueGroup }) {
  const now = useNow();
  const zone = useZone();
  return (
    <Block name={groupTitle(group)} count={group.rows.length} note={group.layer?.offer || undefined}>
      {group.rows.map((row) => {
        const { verdict, evidence, spoken } = queueRowWords(row, now, zone);
        const layer = layerWords(group, row.piece.id);
        return (
          <Row
            key={row.piece.id} mark={row.piece.mark} noun={row.piece.noun} natch={row.dry_evidence.ok ? "next" : "guess"}
            verdict={verdict} evidence={joinFacts(layer, evidence)} spoken={joinFacts(spoken, layer)} href={`/pieces/${row.piece.id}`}
          />
        );
      })}
    </Block>
  );
}

/** Found ware: what stands about without a name, and what became of it. */
import { useState } from "preact/hooks";
import type { FoundRow } from "../../api/shapes-orders";
import { upperFirst } from "../../domain/format";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { Photos } from "../common/photos";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import type { FoundListView } from "./found-view";
import { foundEvidence, foundNatch } from "./found-words";
import { useFoundList } from "./use-found";

const HOME = "/orders";

export function FoundScreen() {
  const screen = useFoundList();
  return <WhenHeard title="Found" within={HOME} screen={screen}>{(value, heardAt) => <Ready view={value} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ view: { rows, taken }, heardAt }: { view: FoundListView; heardAt: Date | null }) {
  const [isAll, showAll] = useState(false);
  const open = rows.filter((row) => row.state === "open");
  const ended = rows.filter((row) => row.state !== "open");
  const tray = (
    <Tray>
      <MainAct href="/found/new">Found something</MainAct>
      {ended.length > 0 && !isAll && <Act onPress={() => { showAll(true); }}>Ended too</Act>}
    </Tray>
  );
  return (
    <Screen title="Found" within={HOME} heardAt={heardAt} tray={tray}>
      <Block name="Nobody’s yet" count={open.length + taken.length}>
        {taken.map((row) => (
          <Row key={row.id} mark="new" natch={row.isKept ? "kept" : "today"} verdict={upperFirst(row.what)} evidence={[row.place, row.isKept ? "kept here" : ""].filter(Boolean).join(" · ") || undefined} spoken={`New: ${row.what}`} />
        ))}
        {open.map((row) => <FoundLine key={row.id} row={row} />)}
        {open.length + taken.length === 0 && <li><Fact label="" natch="done" value="Everything has an owner." note="What stands about without a name goes here." /></li>}
      </Block>
      {isAll && <Block name="Ended" count={ended.length}>{ended.map((row) => <FoundLine key={row.id} row={row} />)}</Block>}
    </Screen>
  );
}

function FoundLine({ row }: { row: FoundRow }) {
  const around = { now: useNow(), zone: useZone() };
  const evidence = foundEvidence(row, around);
  const mark = row.piece?.mark ?? row.mark_seen;
  const claims = row.claims_count === 0 ? "" : row.claims_count === 1 ? "claimed" : `claimed by ${String(row.claims_count)}`;
  return (
    <Row
      mark={mark === "" ? "–" : mark} noun={claims || undefined} natch={foundNatch(row)} verdict={upperFirst(row.what)} evidence={evidence} href={`/found/${row.id}`}
      act={row.photo_ids.length > 0 ? <Photos ids={row.photo_ids.slice(0, 1)} of={`of the ${row.what}`} isSmall /> : undefined}
      spoken={`${row.what}${mark ? `, marked ${mark}` : ", no mark"}${claims ? `, ${claims}` : ""}. ${evidence.replaceAll(" · ", ", ")}.`}
    />
  );
}

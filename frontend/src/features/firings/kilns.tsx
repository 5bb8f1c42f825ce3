/** The kilns: what each is doing, till when and who watches; the next slots; the ware that waits, and the rule of its order. */
import type { Coming, KilnNow } from "../../api/shapes-firings";
import { count, joinFacts, upperFirst } from "../../domain/format";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { hasGrant, useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import css from "./kilns.module.css";
import { KilnsTabs } from "./kilns-tabs";
import { comingEvidence, kilnVerdict, slotWords } from "./load-words";
import type { Around } from "./load-words";
import { groupEvidence, groupTitle, waitingCount } from "./queue-words";
import { useKilns, useQueue } from "./use-kilns";
import type { Kilns, Queue } from "./use-kilns";

const TITLE = "Kilns";

export function KilnsScreen() {
  const screen = useKilns();
  return <WhenHeard title={TITLE} screen={screen}>{(value, heardAt) => <Ready kilns={value} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ kilns, heardAt }: { kilns: Kilns; heardAt: Date | null }) {
  const { membership } = useSession();
  const { units } = membership.member;
  const around = { now: useNow(), zone: useZone(), units };
  const queue = useQueue();
  const tray = (
    <Tray>
      {kilns.mayBuild && <MainAct href="/loads/new">New load</MainAct>}
      {kilns.mayBuild ? <Act href="/kilns/waiting">Waiting ware</Act> : <MainAct href="/kilns/waiting">Waiting ware</MainAct>}
    </Tray>
  );
  return (
    <Screen title={TITLE} heardAt={heardAt} tray={tray}>
      <KilnsTabs here="/kilns" />
      <Block name="Now" count={kilns.kilns.length}>
        {kilns.kilns.map((kiln) => <Kiln key={kiln.id} kiln={kiln} around={around} />)}
      </Block>
      {kilns.kilns.length === 0 && <Fact label="" natch="done" value="No kiln is written down." note="Whoever services kilns writes the first." />}
      <Slots kilns={kilns} around={around} />
      <WaitingBlock queue={queue} />
      <Health kilns={kilns.kilns} />
      {kilns.cautions.map(({ code, detail }) => <p key={code} class={css.care}>{detail}</p>)}
      <div class={css.more}>
        <Act href="/programmes">Programmes</Act>
        {hasGrant(membership, "service_kilns") && <Act href="/kilns/new">New kiln…</Act>}
      </div>
    </Screen>
  );
}

function Kiln({ kiln, around }: { kiln: KilnNow; around: Around }) {
  const words = kilnVerdict(kiln, around);
  const { load } = kiln.doing;
  return (
    <Row
      mark={kiln.number} noun={kiln.name} {...words} href={load === null ? `/kilns/${kiln.id}` : `/loads/${load.id}`}
      spoken={`${kiln.number} ${kiln.name}: ${words.verdict}. ${words.evidence.replaceAll(" · ", ", ")}.`}
    />
  );
}

interface Slot {
  kiln: KilnNow;
  coming: Coming;
}

function Slots({ kilns: { kilns, opened }, around }: { kilns: Kilns; around: Around }) {
  const slots: Slot[] = kilns.flatMap((kiln) => kiln.next_loads.map((coming) => ({ kiln, coming }))).sort((one, other) => Date.parse(one.coming.starts_at) - Date.parse(other.coming.starts_at));
  return (
    <Block name="Next loads" count={slots.length + opened.length}>
      {opened.map((load) => (
        <Row
          key={load.id} mark="new" noun={kilns.find(({ id }) => id === load.kilnId)?.number} natch={load.isKept ? "kept" : "today"} verdict={slotWords(load.startsAt, around.zone)}
          evidence={joinFacts(load.words, load.isKept && "kept here")} spoken={`New load, ${load.words}, ${slotWords(load.startsAt, around.zone)}`}
        />
      ))}
      {slots.map(({ kiln, coming }) => {
        const evidence = comingEvidence(coming, around);
        const slot = slotWords(coming.starts_at, around.zone);
        return (
          <Row
            key={coming.id} mark={coming.number} noun={kiln.number} natch={coming.state === "open" ? "next" : "done"} verdict={slot} evidence={evidence} href={`/loads/${coming.id}`}
            spoken={`${coming.number} in ${kiln.number} ${kiln.name}, ${slot}: ${evidence.replaceAll(" · ", ", ")}.`}
          />
        );
      })}
    </Block>
  );
}

function WaitingBlock({ queue }: { queue: Queue | null }) {
  if (queue === null) return null;
  return (
    <>
      <Block name="Waiting for a kiln" note={waitingCount(queue.groups)}>
        {queue.groups.map((group) => {
          const [title, evidence] = [groupTitle(group), groupEvidence(group)];
          return (
            <Row
              key={`${group.kind}${group.cone}`} mark={String(group.rows.length)} noun={group.rows.length === 1 ? "piece" : "pieces"} natch={group.rows.length > 0 ? "hand" : "done"}
              verdict={title} evidence={evidence} href="/kilns/waiting" spoken={`${title}: ${count(group.rows.length, "piece", "pieces")}, ${evidence.replaceAll(" · ", ", ")}.`}
            />
          );
        })}
      </Block>
      <Fact label="the rule" note={queue.rule} />
    </>
  );
}

/** What its book asks a technician to look at first; each kiln's own screen has the rest. */
function Health({ kilns }: { kilns: readonly KilnNow[] }) {
  if (kilns.length === 0) return null;
  return (
    <Block name="How they are">
      {kilns.map(({ id, number, name, is_out_of_use, out_of_use_reason, remarks, health }) => {
        const [note] = health.notes;
        const verdict = upperFirst(note?.detail ?? health.elements_words);
        const evidence = joinFacts(is_out_of_use && `out of use: ${out_of_use_reason}`, note && health.elements_words, health.ohms_words, remarks, `sensor: ${health.sensor_words}`);
        return <Row key={id} mark={number} noun={name} natch={is_out_of_use || note ? "hand" : "none"} verdict={verdict} evidence={evidence} href={`/kilns/${id}`} spoken={`${number}: ${verdict}. ${evidence.replaceAll(" · ", ", ")}.`} />;
      })}
    </Block>
  );
}

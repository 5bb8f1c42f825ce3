/** The book of a kiln: what was changed, measured and noted on it, newest first, and one more line in it. */
import { useState } from "preact/hooks";
import type { KilnNow, ServiceKind, ServiceRow } from "../../api/shapes-firings";
import type { Page } from "../../api/pages";
import { twoTimes } from "../../domain/clock";
import { count, joinFacts, percent, upperFirst } from "../../domain/format";
import { REASON_MOST } from "../../domain/limits";
import { quantity } from "../../domain/typed";
import { instantOf } from "../../domain/wall";
import { Act, Choice, Count, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact } from "../../ui/seam";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { hasGrant, useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { useRefused } from "../common/use-refused";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useScreen } from "../common/use-screen";
import { WhenHeard } from "../common/when-heard";
import { OneKiln } from "./one-kiln";
import css from "./kilns.module.css";

const HOME = "/kilns";
const KINDS: readonly { value: ServiceKind; words: string }[] = [
  { value: "elements", words: "Elements changed" }, { value: "ohms", words: "Ohms measured" }, { value: "sensor", words: "Sensor changed" }, { value: "vent", words: "Vent seen to" },
  { value: "relay", words: "Relay changed" }, { value: "shelves", words: "Shelves counted" }, { value: "note", words: "Something else" },
];

export function KilnBookScreen({ id = "" }: { id?: string }) {
  return <OneKiln id={id}>{(kiln, kilns) => <Book kiln={kiln} seq={kilns.seq} />}</OneKiln>;
}

function Book({ kiln, seq }: { kiln: KilnNow; seq: number }) {
  const { membership } = useSession();
  const screen = useScreen<Page<ServiceRow>>(`kilns/${kiln.id}/service/`);
  const saying = useSaid(seq);
  const refused = useRefused("served_kiln", kiln.id);
  const [isWriting, write] = useState(false);
  const maySay = hasGrant(membership, "service_kilns");
  if (isWriting || (refused.act !== null && maySay)) return <Write key={refused.act?.id} kiln={kiln} seq={seq} saying={saying} close={() => { write(false); }} />;
  const tray = (
    <Tray isDead={saying.isDead}>
      {maySay ? <MainAct onPress={() => { write(true); }}>Write in it</MainAct> : <MainAct href={`/kilns/${kiln.id}`}>{`Open ${kiln.number}`}</MainAct>}
      {maySay && <Act href={`/kilns/${kiln.id}`}>{kiln.number}</Act>}
    </Tray>
  );
  return (
    <WhenHeard title={`${kiln.number} ${kiln.name}`} within={HOME} screen={screen}>
      {({ results }, heardAt) => (
        <Screen title={`${kiln.number} ${kiln.name}`} when="its book" within={HOME} heardAt={heardAt} tray={tray}>
          <SaidLine mark={kiln.number} saying={saying} />
          <Block name="Its book" count={results.length}>
            {results.map((row) => <li key={row.id}><Line row={row} /></li>)}
            {results.length === 0 && <li><Fact label="" natch="done" value="Nothing was written in it yet." /></li>}
          </Block>
        </Screen>
      )}
    </WhenHeard>
  );
}

function Line({ row: { title, over_new_fraction, shelf_count, words, member, happened_at } }: { row: ServiceRow }) {
  const zone = useZone();
  const now = useNow();
  const figure = over_new_fraction !== null ? `, ${percent(over_new_fraction)} over new` : shelf_count !== null ? `, ${count(shelf_count, "whole one", "whole ones")}` : "";
  const at = new Date(happened_at);
  return <Fact label={member.first_name} value={`${upperFirst(title)}${figure}`} note={joinFacts(words, twoTimes(at, at, now, zone))} />;
}

/** A fact: kept here without signal, dated as the person says. */
function Write({ kiln, seq, saying, close }: { kiln: KilnNow; seq: number; saying: Saying; close: () => void }) {
  const zone = useZone();
  const refused = useRefused("served_kiln", kiln.id);
  const kept = refused.act?.body ?? {};
  const asText = (value: unknown): string => (typeof value === "string" ? value.replace(/ %$/, "") : "");
  const [kind, choose] = useState<ServiceKind>(KINDS.find(({ value }) => value === kept["kind"])?.value ?? "ohms");
  const [over, typeOver] = useState(asText(kept["over_new_fraction"]));
  const [shelves, setShelves] = useState(typeof kept["shelf_count"] === "number" ? kept["shelf_count"] : kiln.shelves.reduce((sum, shelf) => sum + (shelf.count ?? 0), 0));
  const [words, typeWords] = useState(asText(kept["words"]));
  const [when, typeWhen] = useState("");
  const at = when === "" ? null : instantOf(when, zone);
  const isNoTime = when !== "" && (at === null || at.getTime() > Date.now() + 60_000);
  const isReady = !isNoTime && (kind === "ohms" ? over.trim() !== "" : kind !== "note" || words.trim() !== "");
  const said = KINDS.find(({ value }) => value === kind)?.words ?? kind;
  const send = async (): Promise<void> => {
    const fields = {
      kind, ...(kind === "ohms" ? { over_new_fraction: quantity(over, "%", "fraction") } : {}), ...(kind === "shelves" ? { shelf_count: shelves } : {}), ...(words.trim() ? { words: words.trim() } : {}),
    };
    refused.letGo();
    await saying.say({ path: `kilns/${kiln.id}/service/`, fields, basedOn: seq, verb: "served_kiln", about: { kiln_id: kiln.id, kind }, words: `${kiln.number}: ${said.toLowerCase()}`, ...(at ? { happenedAt: at } : {}) }, said);
    close();
  };
  const tray = (
    <Tray isDead={saying.isDead}>
      <MainAct isDisabled={!isReady} onPress={() => void send()}>Keep</MainAct>
      <Act onPress={() => { refused.letGo(); close(); }}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={kiln.number} when="in its book" within={HOME} isSeam={false} tray={tray}>
      {refused.wrong && <p class={css.wrong} role="alert">{refused.wrong}</p>}
      <Choice legend="What" name="kind" options={KINDS} chosen={kind} onChoose={choose} />
      {kind === "ohms" && <Field label="Over new, %" name="over_new_fraction" inputMode="decimal" value={over} onType={typeOver} wrong={refused.wrongAt("#/over_new_fraction")} />}
      {kind === "ohms" && <p class={css.said}>Measured with its power off at the wall and locked there, by whoever may.</p>}
      {kind === "shelves" && <Count label="Whole ones" figure={shelves} onCount={setShelves} />}
      <Field label={kind === "note" ? "What" : "A word to it"} name="words" most={REASON_MOST} value={words} onType={typeWords} wrong={refused.wrongAt("#/words")} />
      <Field label="When, if it was not just now" name="happened_at" type="datetime-local" value={when} onType={typeWhen} wrong={isNoTime ? "That is no time that has been." : refused.wrongAt("#/happened_at")} />
    </Screen>
  );
}

/** One kiln: what it is doing, its chamber and furniture, how old its elements are; out of use and in use again. */
import { useState } from "preact/hooks";
import type { KilnNow } from "../../api/shapes-firings";
import { date } from "../../domain/clock";
import { count, joinFacts, length, temperature, upperFirst } from "../../domain/format";
import { REASON_MOST } from "../../domain/limits";
import { Act, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { isTooLong } from "../../ui/room-left";
import { Fact, Mark } from "../../ui/seam";
import { Standing } from "../../ui/standing";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { hasGrant, useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { useSaid } from "../common/use-said";
import css from "./kilns.module.css";
import { kilnVerdict, slotWords } from "./load-words";
import type { Around } from "./load-words";
import { OneKiln } from "./one-kiln";
import { litresWords } from "./queue-words";
import type { Kilns } from "./use-kilns";

const HOME = "/kilns";

export function KilnScreen({ id = "" }: { id?: string }) {
  return <OneKiln id={id}>{(kiln, kilns, heardAt) => <Ready key={id} kiln={kiln} kilns={kilns} heardAt={heardAt} />}</OneKiln>;
}

function Ready({ kiln, kilns, heardAt }: { kiln: KilnNow; kilns: Kilns; heardAt: Date | null }) {
  const { membership } = useSession();
  const around = { now: useNow(), zone: useZone(), units: membership.member.units };
  const saying = useSaid(kilns.seq);
  const [isOut, setOut] = useState(false);
  const mayService = hasGrant(membership, "service_kilns");
  const tell = (kind: "out_of_use" | "in_use", reason: string): void => {
    const said = kind === "out_of_use" ? "Out of use" : "In use again";
    const about = { kiln_id: kiln.id, kind };
    void saying.say({ path: `kilns/${kiln.id}/events/`, fields: { kind, ...(reason ? { reason } : {}) }, basedOn: kilns.seq, verb: "kiln_told", about, words: `${kiln.number}: ${said.toLowerCase()}` }, said);
    setOut(false);
  };
  if (isOut) return <OutOfUse kiln={kiln} tell={(reason) => { tell("out_of_use", reason); }} back={() => { setOut(false); }} />;
  const { load } = kiln.doing;
  const isBack = kiln.is_out_of_use && mayService;
  const tray = (
    <Tray isDead={saying.isDead}>
      {isBack && <MainAct onPress={() => { tell("in_use", ""); }}>In use again</MainAct>}
      {load && (isBack ? <Act href={`/loads/${load.id}`}>{load.number}</Act> : <MainAct href={`/loads/${load.id}`}>{load.number}</MainAct>)}
      {!load && !kiln.is_out_of_use && <MainAct href="/loads/new">New load</MainAct>}
      {!load && kiln.is_out_of_use && !isBack && <MainAct href="/kilns">To the kilns</MainAct>}
      {mayService && !kiln.is_out_of_use && <Act onPress={() => { setOut(true); }}>Out of use…</Act>}
    </Tray>
  );
  return (
    <Screen title={`${kiln.number} ${kiln.name}`} within={HOME} heardAt={heardAt} tray={tray}>
      <SaidLine mark={kiln.number} saying={saying} />
      <Standing drawing={<Mark mark={kiln.number} noun={kiln.name} />} {...kilnVerdict(kiln, around)} />
      <Chamber kiln={kiln} around={around} />
      <Health kiln={kiln} around={around} />
      {kiln.next_loads.map((coming, place) => (
        <Fact key={coming.id} label={place === 0 ? "next" : ""} natch="next" note={joinFacts(`${coming.kind}, cone ${coming.cone}`, count(coming.pieces, "piece", "pieces"))}>
          <a href={`/loads/${coming.id}`}><b>{coming.number}, {slotWords(coming.starts_at, around.zone)}</b></a>
        </Fact>
      ))}
      {kilns.cautions.map(({ code, detail }) => <Fact key={code} label="mind" note={detail} />)}
      <div class={css.more}>
        <Act href={`/kilns/${kiln.id}/book`}>Its book</Act>
        {mayService && <Act href={`/kilns/${kiln.id}/change`}>Chamber, shelves, posts…</Act>}
      </div>
    </Screen>
  );
}

function Chamber({ kiln, around: { units } }: { kiln: KilnNow; around: Around }) {
  const floor = kiln.diameter_mm === null ? `${length(kiln.width_mm ?? 0, units)} by ${length(kiln.depth_mm ?? 0, units)}` : `${length(kiln.diameter_mm, units)} across`;
  const shelves = kiln.shelves.map((shelf) => `${String(shelf.count ?? 0)} of ${length(shelf.diameter_mm ?? shelf.width_mm ?? 0, units)}`).join(", ");
  const posts = kiln.posts.map((post) => `${String(post.count ?? 0)} of ${length(post.height_mm ?? 0, units)}`).join(", ");
  return (
    <>
      <Fact label="inside" value={`${floor}, ${length(kiln.height_mm, units)} high`} note={joinFacts(kiln.kind === "front" ? "front-loading" : "top-loading", litresWords(kiln.litres), `to ${temperature(kiln.top_c, units)}`)} />
      <Fact label="shelves" value={shelves ? upperFirst(shelves) : "None written down"} note={posts ? `posts: ${posts}` : "no posts written down: what fits cannot be said"} />
    </>
  );
}

/** What its book says: age, sensor, elements, and what a technician should look at. */
function Health({ kiln, around: { now, zone } }: { kiln: KilnNow; around: Around }) {
  const { health } = kiln;
  const since = health.elements_since === null ? "their change is not written down" : `changed ${date(new Date(`${health.elements_since}T12:00:00Z`), now, zone)}`;
  return (
    <>
      {health.notes.map(({ code, detail }, place) => <Fact key={code} label={place === 0 ? "look at" : ""} natch="hand" value={detail} />)}
      <Fact label="elements" value={upperFirst(health.elements_words)} note={joinFacts(since, health.ohms_words)} />
      <Fact label="sensor" value={upperFirst(health.sensor_words)} note={health.trend === "" ? undefined : TRENDS[health.trend]} />
      {health.shelf_count !== null && <Fact label="whole" value={count(health.shelf_count, "shelf", "shelves")} />}
      {kiln.remarks && <Fact label="notes" value={kiln.remarks} />}
      {kiln.out_of_use_since && <Fact label="out since" natch="hand" value={date(new Date(kiln.out_of_use_since), now, zone)} note={kiln.out_of_use_reason} />}
    </>
  );
}

const TRENDS = { hot: "by the cones of two loads it runs hot", cool: "by the cones of two loads it runs cool", on: "the cones of two loads agree with it" } as const;

function OutOfUse({ kiln, tell, back }: { kiln: KilnNow; tell: (reason: string) => void; back: () => void }) {
  const [reason, type] = useState("");
  const booked = kiln.next_loads.map(({ number }) => number).join(", ");
  const tray = (
    <Tray>
      <MainAct isDisabled={reason.trim() === "" || isTooLong(reason, REASON_MOST)} onPress={() => { tell(reason.trim()); }}>Out of use</MainAct>
      <Act onPress={back}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={kiln.number} when="out of use" within={HOME} isSeam={false} tray={tray}>
      <p>{booked ? `${booked} will want another kiln; nothing of them is lost, and whoever has ware in them is told.` : "No load is booked on it."}</p>
      <Field label="Why" name="reason" most={REASON_MOST} value={reason} onType={type} />
    </Screen>
  );
}

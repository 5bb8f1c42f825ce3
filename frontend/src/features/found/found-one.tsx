/** One found thing: what and where, whose it may be, who claims it, and what becomes of it. */
import { useState } from "preact/hooks";
import { dayAndClock } from "../../domain/clock";
import { joinFacts, upperFirst } from "../../domain/format";
import { calledBy } from "../../domain/people";
import { Act, Choice, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact } from "../../ui/seam";
import { Standing } from "../../ui/standing";
import { StageMark } from "../../ui/marks";
import { Photos } from "../common/photos";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { Toggles } from "../../ui/toggles";
import order from "../orders/order.module.css";
import { markOf } from "../pieces/stage";
import { keptWords, sizeWords } from "./found-words";
import { useFoundOne, useFoundScreen } from "./use-found";
import type { FoundOne } from "./use-found";

const HOME = "/orders";

export function FoundOneScreen({ id = "" }: { id?: string }) {
  const screen = useFoundScreen(id);
  return <WhenHeard title="Found" within={HOME} screen={screen}>{(value, heardAt) => <Ready key={id} snapshot={value} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ snapshot, heardAt }: { snapshot: Parameters<typeof useFoundOne>[0]; heardAt: Date | null }) {
  const zone = useZone();
  const now = useNow();
  const { units } = useSession().membership.member;
  const one = useFoundOne(snapshot);
  const { found, kept } = one.view;
  if (one.sheet !== "none") return <FoundSheetScreen one={one} />;
  const mark = found.piece?.mark ?? found.mark_seen;
  const size = sizeWords(found, units);
  return (
    <Screen title="Found" when={mark || "no mark"} within={HOME} heardAt={heardAt} tray={<FoundTray one={one} />}>
      <SaidLine mark={mark || "found"} saying={one.saying} />
      <Standing drawing={<StageMark name={markOf(found.looks, "")} />} verdict={upperFirst(found.what)} evidence={joinFacts(found.looks_words, found.place?.name)} />
      {found.photo_ids.length > 0 && <Fact label={found.photo_ids.length > 1 ? "photos" : "photo"}><Photos ids={found.photo_ids} of={`of the ${found.what}`} /></Fact>}
      <Fact label="found" value={upperFirst(dayAndClock(new Date(found.found_at), now, zone))} note={found.found_by.first_name} />
      {(size !== "" || found.body) && <Fact label="size" value={size || "not measured"} note={found.body?.name} />}
      <Fact label="kept" natch={found.is_notice_past ? "hand" : "none"} value={found.state === "open" ? upperFirst(keptWords(found, { now, zone }).replace(/^kept /, "")) : found.state === "returned" ? "Given back" : "Let go"} note={found.state === "open" ? "nobody’s until then; no load may take it" : undefined} />
      {found.piece && <Fact label="record"><a href={`/pieces/${found.piece.id}`}>{found.piece.mark}, its story so far</a></Fact>}
      {kept.map((telling) => <Fact key={telling.id} label="" natch="kept" value={telling.words} note="kept here" />)}
      <Owners one={one} />
      <Claims one={one} />
    </Screen>
  );
}

function Owners({ one: { view: { found, asked } } }: { one: FoundOne }) {
  if (found.state !== "open") return null;
  return (
    <Block name="Likely owners" count={found.candidates.length}>
      {found.candidates.map(({ member, piece, why }) => (
        <li key={piece.id}>
          <Fact label={member.first_name} natch={asked.has(member.id) ? "done" : "guess"} value={`${piece.mark}, ${piece.noun}`} note={joinFacts(asked.has(member.id) && "asked", piece.state_words)}>
            <p>{upperFirst(why.join("; "))}.</p>
          </Fact>
        </li>
      ))}
      {found.candidates.length === 0 && <li><Fact label="" natch="done" value="Nobody comes to mind." note="No record fits with where it stood and how large it is." /></li>}
    </Block>
  );
}

function Claims({ one: { view: { found } } }: { one: FoundOne }) {
  const zone = useZone();
  const now = useNow();
  if (found.claims.length === 0) return null;
  return (
    <Block name="Says it is theirs" count={found.claims.length} note={found.claims.length > 1 ? "the owner of the studio decides" : undefined}>
      {found.claims.map((claim) => (
        <li key={claim.id}><Fact label={claim.member.first_name} natch={found.claims.length > 1 ? "two" : "hand"} value={claim.piece ? `Says it is ${claim.piece.mark}` : "Says it is theirs"} note={dayAndClock(new Date(claim.happened_at), now, zone)} /></li>
      ))}
    </Block>
  );
}

function FoundTray({ one }: { one: FoundOne }) {
  const { membership } = useSession();
  const { found, asked, isClaimedHere } = one.view;
  if (found.state !== "open") return <Tray><Act href="/found">Found ware</Act></Tray>;
  const unasked = found.candidates.filter(({ member }) => !asked.has(member.id) && member.id !== membership.member.id).map(({ member }) => member);
  const people = unasked.filter((member, place) => unasked.findIndex((other) => other.id === member.id) === place);
  const isMine = isClaimedHere || found.claims.some((claim) => claim.member.id === membership.member.id);
  return (
    <Tray isDead={one.saying.isDead}>
      {found.may.give_back && found.claims.length > 0
        ? <MainAct onPress={() => { one.open("back"); }}>Give back…</MainAct>
        : <MainAct isDisabled={people.length === 0} spoken={people.length === 1 ? `Ask ${people[0]?.first_name ?? ""}` : "Ask the likely owners"} onPress={() => { one.ask(people); }}>{people.length === 1 ? `Ask ${people[0]?.first_name ?? ""}` : "Ask them"}</MainAct>}
      {!isMine && <Act onPress={() => { one.open("claim"); }}>It is mine…</Act>}
      {found.may.dispose && <Act onPress={() => { one.open("let_go"); }}>Let it go…</Act>}
    </Tray>
  );
}

const TITLES = { claim: "it is mine", back: "give back", let_go: "let it go" } as const;

function FoundSheetScreen({ one }: { one: FoundOne }) {
  if (one.sheet === "none") return null;
  const tray = <Tray><Act onPress={() => { one.open("none"); }}>Not now</Act></Tray>;
  return (
    <Screen title="Found" when={TITLES[one.sheet]} within={HOME} isSeam={false} tray={tray}>
      {one.sheet === "claim" ? <ClaimSheet one={one} /> : one.sheet === "back" ? <BackSheet one={one} /> : <LetGoSheet one={one} />}
    </Screen>
  );
}

function ClaimSheet({ one }: { one: FoundOne }) {
  const { membership } = useSession();
  const { found } = one.view;
  const own = found.candidates.filter(({ member }) => member.id === membership.member.id);
  const [pieces, choose] = useState<ReadonlySet<string>>(new Set(own.slice(0, 1).map(({ piece }) => piece.id)));
  const [pieceId = null] = [...pieces];
  return (
    <div class={order.stack}>
      <p>{upperFirst(found.what)}, found by {found.found_by.first_name}. What you say is kept, and who found it is told.</p>
      {own.length > 0 && (
        <Toggles
          legend="Which of yours" options={own.map(({ piece }) => ({ value: piece.id, words: piece.mark, note: `${piece.noun}, ${piece.state_words}` }))}
          chosen={pieces} onToggle={(id) => { choose(pieces.has(id) ? new Set() : new Set([id])); }}
        />
      )}
      <MainAct onPress={() => { one.claim(pieceId); }}>It is mine</MainAct>
    </div>
  );
}

function BackSheet({ one }: { one: FoundOne }) {
  const { claims } = one.view.found;
  const [claimId, choose] = useState<string | null>(claims.length === 1 ? claims[0]?.id ?? null : null);
  const to = claims.find((claim) => claim.id === claimId);
  return (
    <div class={order.stack}>
      <Choice legend="To whom" name="claim" options={claims.map((claim) => ({ value: claim.id, words: calledBy(claims.map(({ member }) => member))(claim.member), note: claim.piece?.mark }))} chosen={claimId} onChoose={choose} />
      <MainAct isDisabled={!to} onPress={() => { one.end("returned", claimId); }}>{to ? `Give back to ${to.member.first_name}` : "Give back"}</MainAct>
    </div>
  );
}

/** The second step of an ending; nothing here is the main act. */
function LetGoSheet({ one }: { one: FoundOne }) {
  const { found } = one.view;
  return (
    <>
      <p>{upperFirst(found.what)}: {found.notice_words}. Letting it go ends it for good; its record stays.</p>
      <div class={order.far}><Act onPress={() => { one.end("disposed", null); }}>Let it go</Act></div>
    </>
  );
}

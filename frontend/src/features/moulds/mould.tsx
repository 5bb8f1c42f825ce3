/** One mould set: parts and place, how damp, how worn, its line of castings, who has booked it. */
import type { InspectionRow } from "../../api/shapes-moulds";
import { clock, date, dayAndClock } from "../../domain/clock";
import { joinFacts, mass, upperFirst } from "../../domain/format";
import { Act, SmallAct } from "../../ui/act";
import { Block, Fact, Mark } from "../../ui/seam";
import { Standing } from "../../ui/standing";
import { Cautions } from "../common/cautions";
import { Photos } from "../common/photos";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { CrumbCheckRows } from "./crumbs";
import { basisWords, drynessWord } from "./dryness";
import { DrynessBar } from "./dryness-bar";
import css from "./mould.module.css";
import { detailPair } from "./mould-detail";
import { MouldSheets, MouldTray } from "./mould-sheets";
import { castingWords, partNote, partsWords, wearWords } from "./mould-words";
import { useMouldNow } from "./use-mould";
import type { MouldNow } from "./use-mould";
import { useMouldScreen } from "./use-mould-screen";
import type { MouldScreenState, MouldSheet } from "./use-mould-screen";

const HOME = "/bench";

export function MouldScreen({ id = "" }: { id?: string }) {
  const screen = useMouldNow(id);
  return <WhenHeard title="Mould" within={HOME} screen={screen}>{(value, heardAt) => <Ready key={id} mould={value} heardAt={heardAt} />}</WhenHeard>;
}

interface Shown {
  mould: MouldNow;
  screen: MouldScreenState;
  now: Date;
  zone: string;
}

function Ready({ mould, heardAt }: { mould: MouldNow; heardAt: Date | null }) {
  const zone = useZone();
  const now = useNow();
  const screen = useMouldScreen(mould);
  const { set, readiness, bar } = mould;
  const shown = { mould, screen, now, zone };
  const sheet = sheetOf(screen);
  if (sheet !== "none" && sheet !== "weigh") return <MouldSheets mould={mould} screen={screen} sheet={sheet} />;
  const wear = wearWords(set);
  return (
    <Screen title={set.label} when={set.makes.design_name} within={HOME} heardAt={heardAt} tray={<MouldTray mould={mould} screen={screen} />}>
      <SaidLine mark={set.label} saying={screen.saying} />
      <Standing
        drawing={<Mark mark={set.label} noun={set.makes.role} />}
        verdict={drynessWord(readiness.dryness)}
        evidence={joinFacts(basisWords(readiness.dryness), set.place?.name, set.owner ? set.owner.first_name : "the studio’s")}
      />
      <DrynessBar data={bar} />
      <LastWeight {...shown} />
      <Fact label="parts" value={partsWords(set.parts)} />
      <Fact label="pressed" value={wear.value} note={wear.note} natch={isTired(set.wear.word) ? "hand" : "none"} />
      <Detail {...shown} />
      <Fact label="advice" value={upperFirst(readiness.advice.reason)} />
      <Cautions words={readiness.cautions} />
      <div class={css.more}>
        <Act href={`/press/${set.id}`}>Press {set.label}</Act>
        {screen.may.weigh && <Act onPress={() => { screen.open("look"); }}>Look at the detail…</Act>}
      </div>
      <Kept {...shown} />
      {screen.isCrumbly && screen.crumbs && <CrumbCheckRows found={screen.crumbs} />}
      <Parts {...shown} />
      <Castings {...shown} />
      <Bookings {...shown} />
    </Screen>
  );
}

/** What was asked for; else the form of what the studio did not take. */
function sheetOf({ sheet, bookRefused, pourRefused }: MouldScreenState): MouldSheet {
  if (sheet !== "none") return sheet;
  if (bookRefused.act !== null) return "book";
  return pourRefused.act === null ? "none" : "pour";
}

/** The first photo beside the latest: side by side a worn line shows. */
function Detail({ mould: { set }, screen, now, zone }: Shown) {
  const pair = detailPair(screen.looks);
  if (pair === null) return null;
  const { first, latest } = pair;
  const part = set.parts.find((one) => one.id === pair.partId)?.name ?? "a part laid aside";
  const words = (look: InspectionRow): string => `${date(new Date(look.happened_at), now, zone)}, ${look.finding}`;
  const ids = [first, latest].flatMap((look) => look?.photo_ids.slice(0, 1) ?? []);
  return (
    <Fact label="detail" value={upperFirst(part)} note={latest ? `first ${words(first)} · latest ${words(latest)}` : words(first)}>
      <Photos ids={ids} of={`of the detail of ${set.label}, ${part}`} />
    </Fact>
  );
}

const isTired = (word: string): boolean => word === "look at its detail" || word === "at its limit";

function LastWeight({ mould: { set, readiness }, screen, now, zone }: Shown) {
  const { units } = useSession().membership.member;
  const [last] = screen.weighings;
  const { dry_at, usable_at } = readiness;
  const at = readiness.dryness.word === "rest" ? usable_at?.p50 : dry_at?.p50;
  const dryWeight = set.casting?.dry_g ? `dry ${mass(set.casting.dry_g, units)}` : "no dry weight yet";
  return (
    <>
      {last && <Fact label="weighed" value={mass(last.mass_g, units)} note={joinFacts(dayAndClock(new Date(last.happened_at), now, zone), dryWeight)} />}
      {at && <Fact label={readiness.dryness.word === "rest" ? "usable" : "dry"} natch="guess" value={`Likely by ${dayAndClock(new Date(at), now, zone)}`} note={readiness.air ? joinFacts(readiness.air.words, readiness.air.is_assumed && "assumed") : undefined} />}
    </>
  );
}

function Kept({ screen, zone }: Shown) {
  if (screen.kept.length === 0) return null;
  return (
    <Block name="Done here" count={screen.kept.length}>
      {screen.kept.map((act) => <li key={act.id}><Fact label={clock(new Date(act.made_at), zone)} natch={act.state === "waiting" ? "kept" : "today"} value={act.words} note={act.state === "waiting" ? "kept here" : "heard"} /></li>)}
    </Block>
  );
}

function Parts({ mould: { set }, screen }: Shown) {
  const mayTell = screen.may.report || screen.may.edit;
  return (
    <Block name="Mould parts" count={set.parts.length}>
      {set.parts.map((part) => (
        <li key={part.id}>
          <Fact
            label={part.name} natch={part.state === "whole" ? "none" : "hand"} value={upperFirst(partNote(part) ?? "whole")}
            note={joinFacts(`${String(part.presses)} presses`, part.presses_before > 0 && `${String(part.presses_before)} of them taken over${part.presses_before_by ? `, says ${part.presses_before_by.first_name}` : ""}`)}
          />
        </li>
      ))}
      {mayTell && <li class={css.more}><Act onPress={() => { screen.open("part"); }}>Chipped, out of use, found…</Act></li>}
    </Block>
  );
}

function Castings({ mould, screen, now, zone }: Shown) {
  return (
    <Block name="From the master" count={screen.castings.length}>
      {screen.castings.map((casting) => {
        const { value, note } = castingWords(casting, now, zone);
        return <li key={casting.id}><Fact label="" natch={casting.is_in_use ? "today" : "done"} value={value} note={note} /></li>;
      })}
      {screen.may.edit && mould.set.casting && <li class={css.more}><Act onPress={() => { screen.open("pour"); }}>Cast {mould.set.label} again…</Act></li>}
    </Block>
  );
}

function Bookings({ screen, now, zone }: Shown) {
  const { membership } = useSession();
  const when = (at: string): string => `${date(new Date(at), now, zone)}, ${clock(new Date(at), zone)}`;
  return (
    <Block name="Booked" count={screen.bookings.length}>
      {screen.bookings.map((booking) => (
        <li key={booking.id}>
          <Fact label={booking.member.first_name} natch="next" value={`From ${when(booking.from_at)}`} note={`until ${when(booking.until_at)}`}>
            {booking.member.id === membership.member.id && <SmallAct spoken={`Give up the booking from ${when(booking.from_at)}`} onPress={() => { screen.giveUp(booking); }}>Give up</SmallAct>}
          </Fact>
        </li>
      ))}
    </Block>
  );
}

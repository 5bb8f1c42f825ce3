/** Four weeks of kilns: weeks under weeks on a phone, side by side on a desk, with what waits and the load one looks at. */
import { useState } from "preact/hooks";
import type { LoadBrief } from "../../api/shapes-firings";
import { count, joinFacts, upperFirst } from "../../domain/format";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { useIsWide } from "../orders/use-wide";
import css from "./kilns.module.css";
import { KilnsTabs } from "./kilns-tabs";
import { loadTitle, slotWords } from "./load-words";
import { useWeeks } from "./use-weeks";
import type { Weeks } from "./use-weeks";
import { ChosenLoad, WaitingTable } from "./weeks-desk";
import { WeeksLegend, WeeksPicture } from "./weeks-picture";

const TITLE = "Four weeks";

export function WeeksScreen() {
  const screen = useWeeks();
  return <WhenHeard title={TITLE} screen={screen}>{(value, heardAt) => <Ready weeks={value} heardAt={heardAt} />}</WhenHeard>;
}

const ACTIVE: ReadonlySet<string> = new Set(["open", "settled", "loading", "firing", "stopped", "cooling", "opened"]);

/** Those still to come or still going on, the next first. */
function comingOf(loads: readonly LoadBrief[]): LoadBrief[] {
  return loads.filter(({ state }) => ACTIVE.has(state)).sort((one, other) => Date.parse(one.starts_at) - Date.parse(other.starts_at));
}

function sentenceOf(loads: readonly LoadBrief[], hasPromises: boolean): string {
  const booked = loads.filter(({ state }) => state === "open" || state === "settled");
  const said = booked.length === 0 ? "No load is booked." : `${upperFirst(count(booked.length, "load is", "loads are"))} booked.`;
  return `${said}${hasPromises ? "" : " Nothing is promised in these four weeks."}`;
}

function Ready({ weeks, heardAt }: { weeks: Weeks; heardAt: Date | null }) {
  const isWide = useIsWide();
  const now = useNow(60);
  const zone = useZone();
  const { plan, kilns, loads } = weeks;
  const coming = comingOf(loads);
  const said = sentenceOf(loads, plan.promises.length > 0);
  const main = kilns.mayBuild ? <MainAct href="/loads/new">New load</MainAct> : <MainAct href="/kilns/waiting">Waiting ware</MainAct>;
  if (isWide) {
    return (
      <Screen title={TITLE} heardAt={heardAt} isWide acts={<>{main}<Act href="/kilns">Kilns now</Act></>}>
        <Desk weeks={weeks} coming={coming} said={said} now={now} zone={zone} />
      </Screen>
    );
  }
  return (
    <Screen title="Kilns" heardAt={heardAt} tray={<Tray>{main}</Tray>}>
      <KilnsTabs here="/kilns/weeks" />
      <WeeksPicture plan={plan} now={now} zone={zone} isDesk={false} />
      <Fact label="" note={`${said} Black: firing. Hatched: cooling. Thin line: waits to be opened. Outline: booked, with a day to cool. Light hatching: nobody in.`} />
      <Block name="Loads" count={coming.length}>
        {coming.map((load) => {
          const evidence = joinFacts(load.state_words, `${load.kind}, cone ${load.cone}`, count(load.pieces, "piece", "pieces"));
          const slot = slotWords(load.times.started_at ?? load.starts_at, zone);
          return <Row key={load.id} mark={load.number} noun={load.kiln.number} natch={load.state === "open" ? "next" : "hand"} verdict={slot} evidence={evidence} href={`/loads/${load.id}`} spoken={`${load.number}, ${loadTitle(load)}, ${slot}: ${load.state_words}.`} />;
        })}
      </Block>
    </Screen>
  );
}

function Desk({ weeks: { plan }, coming, said, now, zone }: { weeks: Weeks; coming: readonly LoadBrief[]; said: string; now: Date; zone: string }) {
  const [chosenId, choose] = useState<string | null>(null);
  const open = coming.find(({ state }) => state === "open");
  const chosen = coming.find(({ id }) => id === chosenId) ?? open ?? coming[0] ?? null;
  return (
    <div class={css.wide}>
      <p class={css.lede}>{said}</p>
      <WeeksPicture plan={plan} now={now} zone={zone} isDesk />
      <div class={css.halves}>
        <section aria-label="Waiting for a kiln">
          <h2>Waiting for a kiln</h2>
          <WaitingTable now={now} zone={zone} />
          <WeeksLegend />
        </section>
        <section aria-label={chosen ? chosen.number : "No load"}>
          {chosen ? <ChosenLoad key={chosen.id} load={chosen} all={coming} choose={choose} zone={zone} /> : <p>No load is booked or firing. Ware that waits is on the left.</p>}
        </section>
      </div>
    </div>
  );
}

/** A load in the fire and after: what it reads, its curve, its cones, when it may be opened; stopped, what it may become. */
import type { KilnReading, LoadWhole } from "../../api/shapes-firings";
import { clock, dayAndClock, realTime } from "../../domain/clock";
import { halves, joinFacts, temperature, THIN, upperFirst } from "../../domain/format";
import { Act, SmallAct } from "../../ui/act";
import { Fact, Mark } from "../../ui/seam";
import { Standing } from "../../ui/standing";
import { conesWords, ranHot } from "./cone-words";
import { usedReadings } from "./curve-geometry";
import { FiringCurve } from "./firing-curve";
import css from "./kilns.module.css";
import { Cautions, Log, Makers, Warnings } from "./load-parts";
import type { Shown } from "./load";
import { hotWords, loadVerdict, openingBasis, openingWords } from "./load-words";
import type { Around } from "./load-words";
import { Stopped } from "./stopped";

export function FiringView({ it, around }: Shown) {
  const { load } = it;
  return (
    <>
      <Standing drawing={<Mark mark={load.kiln.number} noun={load.kiln.name} />} {...loadVerdict(load, around)} />
      {load.is_in_doubt && <Fact label="" natch="two" value="Two stories of this load" note="what cannot both be so stands in its log"><div class={css.stack}><Act href="/clashes">Say which stands</Act></div></Fact>}
      <AskedReadings it={it} around={around} />
      {load.state === "stopped" && <Stopped it={it} around={around} />}
      <FiringCurve load={load} now={around.now} />
      <Took load={load} around={around} />
      <LastThree it={it} around={around} />
      {load.state !== "stopped" && <Cones load={load} around={around} />}
      {load.state === "cooling" && load.opening && <Fact label="opens" natch="guess" value={upperFirst(openingWords(load.opening, around))} note={`${openingBasis(load.opening)} · only a measured temperature opens it`} />}
      <Warnings load={load} />
      <Makers load={load} />
      <Cautions cautions={load.cautions} />
      <Log it={it} around={around} />
    </>
  );
}

function Took({ load, around }: { load: LoadWhole; around: Around }) {
  const { now, zone } = around;
  const { started_at, ended_at } = load.times;
  if (started_at === null) return null;
  const [from, to] = [new Date(started_at), ended_at === null ? now : new Date(ended_at)];
  const hours = (to.getTime() - from.getTime()) / 3_600_000;
  const value = realTime(from, to, zone) ?? `${halves(load.firing_h ?? hours)}${THIN}h`;
  const note = joinFacts(
    `${dayAndClock(from, now, zone)}${ended_at === null ? "" : ` to ${clock(to, zone)}`}`, load.clock_change?.words,
    load.gap_h >= 0.25 ? `${halves(load.gap_h)}${THIN}h of it without power` : load.hot_h >= 0.25 && hotWords(load.hot_h, around),
  );
  return <Fact label={ended_at === null ? "so far" : "took"} value={upperFirst(value)} note={note} />;
}

/** The last three readings, the newest first. */
export function LastThree({ it: { load, keptIds }, around: { now, zone, units } }: Omit<Shown, "fit">) {
  const last = usedReadings(load.readings).map(({ reading }) => reading).slice(-3).reverse();
  return (
    <>
      {last.map((reading, place) => (
        <Fact
          key={reading.id} label={place === 0 ? "last" : place === 1 ? "before" : ""} natch={keptIds.has(reading.id) ? "kept" : "none"}
          value={`${temperature(reading.reading_c, units)} at ${dayAndClock(new Date(reading.taken_at), now, zone)}`}
          note={joinFacts(reading.set_c === null ? null : `programme ${temperature(reading.set_c, units)}`, reading.words || null, reading.use === "over_top" ? "over its top" : null) || undefined}
        />
      ))}
    </>
  );
}

/** A figure that can hardly be so: kept, left out of the curve, and asked about here. */
export function AskedReadings({ it, around: { now, zone, units } }: Omit<Shown, "fit">) {
  const asked = it.load.readings.filter(({ use }) => use === "asked" || use === "left_out");
  return (
    <>
      {asked.slice(0, 2).map((reading: KilnReading) => (
        <Fact key={reading.id} label="asked" natch="hand" value={`${temperature(reading.reading_c, units)} at ${dayAndClock(new Date(reading.taken_at), now, zone)}?`} note={reading.why || "it can hardly be so; it is kept, and left out of the curve"}>
          {reading.instead_c !== null && it.load.may.record && (
            <SmallAct onPress={() => { if (reading.instead_c !== null) it.mend(reading, reading.instead_c); }}>{`It was ${temperature(reading.instead_c, units)}`}</SmallAct>
          )}
        </Fact>
      ))}
    </>
  );
}

function Cones({ load, around: { now, zone } }: { load: LoadWhole; around: Around }) {
  const words = conesWords(load.cones);
  if (words === null) return null;
  const at = load.cones.at(-1)?.happened_at;
  const hot = ranHot(load.cones);
  return <Fact label="cones" natch={hot === null ? "none" : "past"} value={words.value} note={joinFacts(hot, words.note, at && `seen ${dayAndClock(new Date(at), now, zone)}`)} />;
}

/** A reading of a kiln: a big number pad, the programme now, the last three, cones seen. Typed by somebody who went and looked. */
import { useState } from "preact/hooks";
import type { LoadAnswer } from "../../api/shapes-firings";
import { clock } from "../../domain/clock";
import { joinFacts, temperature } from "../../domain/format";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { NumberPad } from "../../ui/number-pad";
import type { Key } from "../../ui/number-pad";
import { Fact } from "../../ui/seam";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { usedReadings } from "./curve-geometry";
import shared from "./kilns.module.css";
import css from "./reading.module.css";
import { readingAct } from "./load-acts";
import { AskedReadings, LastThree } from "./load-firing";
import { ConesSheet } from "./cones-sheet";
import { figureOf, oddReading, pressed, sentFigure, toCelsius } from "./reading-typed";
import type { Odd } from "./reading-typed";
import { useKilns } from "./use-kilns";
import { useFit, useLoad, useLoadScreen } from "./use-load";

const TITLE = "Reading";

export function ReadingScreen({ id = "" }: { id?: string }) {
  const screen = useLoadScreen(id);
  return <WhenHeard title={TITLE} within="/kilns" screen={screen}>{(value, heardAt) => <Ready key={id} snapshot={value} heardAt={heardAt} />}</WhenHeard>;
}

type Figures = Record<"reads" | "set", string>;

function Ready({ snapshot, heardAt }: { snapshot: LoadAnswer; heardAt: Date | null }) {
  const { units } = useSession().membership.member;
  const around = { now: useNow(), zone: useZone(), units };
  const it = useLoad(snapshot);
  const fit = useFit(snapshot.load.id);
  const kilns = useKilns();
  const [figures, type] = useState<Figures>({ reads: "", set: "" });
  const [into, typeInto] = useState<keyof Figures>("reads");
  const [odd, ask] = useState<Odd | null>(null);
  const { load } = it;
  if (it.sheet.name === "cones") return <ConesSheet it={it} fit={fit} around={around} />;
  const topC = kilns.state === "ready" ? kilns.value.kilns.find(({ id }) => id === load.kiln.id)?.top_c ?? null : null;
  const unit = units.temperature;
  const [reads, set] = [figureOf(figures.reads), figureOf(figures.set)];
  const press = (key: Key): void => { ask(null); type({ ...figures, [into]: pressed(figures[into], key) }); };
  const keep = (celsius: number, value: number | string): void => {
    const said = temperature(celsius, units);
    void it.saying.say(readingAct(load, { value, celsius, set: set === null ? null : sentFigure(set, unit), said }, it.seq), `Reads ${said}`);
    type({ reads: "", set: "" });
    typeInto("reads");
    ask(null);
  };
  const save = (): void => {
    if (reads === null) return;
    const celsius = toCelsius(reads, unit);
    const doubt = oddReading(celsius, topC, unit);
    if (doubt === null) keep(celsius, sentFigure(reads, unit));
    else ask(doubt);
  };
  const keepAsTyped = (): void => { if (reads !== null) keep(toCelsius(reads, unit), sentFigure(reads, unit)); };
  return (
    <Screen
      title={load.number} when={`${load.kiln.number} ${load.kiln.name}`} within="/kilns" heardAt={heardAt}
      tray={odd === null
        ? <Pad press={press} save={save} isReady={reads !== null} isDead={it.saying.isDead} cones={() => { it.open({ name: "cones" }); }} />
        : <AskTray odd={odd} typed={`${figures.reads} ${unit === "c" ? "°C" : "°F"}`} instead={(celsius) => { keep(celsius, celsius); }} asTyped={keepAsTyped} />}
    >
      <SaidLine mark={load.number} saying={it.saying} />
      <div class={css.figures}>
        {(["reads", "set"] as const).map((name) => (
          <label key={name} class={into === name ? css.typing : undefined}>
            {name === "reads" ? `It reads, ${unit === "c" ? "°C" : "°F"}` : "its set point"}
            <input inputMode="none" value={figures[name]} onFocus={() => { typeInto(name); }} onInput={(event) => { ask(null); type({ ...figures, [name]: event.currentTarget.value }); }} onKeyDown={(event) => { if (event.key === "Enter") save(); }} />
          </label>
        ))}
      </div>
      <Planned it={it} around={around} />
      <AskedReadings it={it} around={around} />
      <LastThree it={it} around={around} />
      {usedReadings(load.readings).length === 0 && <Fact label="last" natch="done" value="No reading yet" note={`one is asked for each ${String(load.reading_every_min)} min`} />}
      <div class={shared.more}><Act href={`/loads/${load.id}/readings`}>A table off a controller…</Act></div>
      <p class={shared.care}>A reading is a note of a look: Natch does not watch the kiln.</p>
    </Screen>
  );
}

function Planned({ it: { load }, around: { now, zone, units } }: { it: ReturnType<typeof useLoad>; around: { now: Date; zone: string; units: Parameters<typeof temperature>[1] } }) {
  if (load.planned_now_c === null) return <Fact label="planned" note={load.programme ? `${load.programme.name}, top ${temperature(load.programme.top_c, units)}` : "none chosen for this load"} />;
  return <Fact label="planned" value={`${temperature(load.planned_now_c, units)} now`} note={joinFacts(load.programme?.name, `at ${clock(now, zone)}`)} />;
}

function Pad({ press, save, isReady, isDead, cones }: { press: (key: Key) => void; save: () => void; isReady: boolean; isDead: boolean; cones: () => void }) {
  return (
    <Tray isFree isDead={isDead}>
      <NumberPad press={press} />
      <div class={css.padActs}>
        <MainAct isDisabled={!isReady} onPress={save}>Save</MainAct>
        <Act onPress={cones} wide="Cones">Cones seen</Act>
      </div>
    </Tray>
  );
}

/** Asked before it is kept: the other degrees, or truly so. */
function AskTray({ odd, typed, instead, asTyped }: { odd: Odd; typed: string; instead: (celsius: number) => void; asTyped: () => void }) {
  const other = odd.instead;
  return (
    <Tray isStack mark={typed} reason={odd.why}>
      {other ? <MainAct onPress={() => { instead(other.celsius); }}>{`It shows ${other.words}`}</MainAct> : <MainAct onPress={asTyped}>It is so: keep it</MainAct>}
      {other && <Act onPress={asTyped}>It is so: keep it</Act>}
    </Tray>
  );
}

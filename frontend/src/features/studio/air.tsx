/** The air of a room, off the meter: temperature and damp, kept as typed with its unit. Odd figures are kept and asked about. */
import { useState } from "preact/hooks";
import type { PlaceRow } from "../../api/shapes-pieces";
import type { ReadingRow } from "../../api/shapes-studio";
import { dayAndClock } from "../../domain/clock";
import { joinFacts, percent, temperature as temperatureWords } from "../../domain/format";
import { Act, Choice, Field, MainAct } from "../../ui/act";
import { Pair, Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { useSession, useZone } from "../common/session";
import { SaidLine } from "../common/said-line";
import { useNow } from "../common/use-now";
import css from "./studio.module.css";
import { useAir, useRoomAir } from "./use-air";
import type { RoomAir } from "./use-air";

export function AirScreen() {
  const { rooms, room, choose } = useAir();
  if (room === null) {
    return <Screen title="Air" within="/more" isSeam={false}><p>No rooms heard of yet. Ask an owner to name one, or come back with signal.</p></Screen>;
  }
  const rest = <Choice legend="Where the meter hangs" name="room" options={rooms.map((one) => ({ value: one.id, words: one.name }))} chosen={room.id} onChoose={choose} />;
  return <RoomScreen key={room.id} room={room} rooms={rest} />;
}

function RoomScreen({ room, rooms }: { room: PlaceRow; rooms: preact.JSX.Element }) {
  const air = useRoomAir(room);
  const { units } = useSession().membership.member;
  const typed = air.refused.act?.body;
  const [warmth, setWarmth] = useState(asText(typed?.["air_c"]));
  const [damp, setDamp] = useState(asText(typed?.["humidity_fraction"]));
  const [when, setWhen] = useState("");
  const [isNoTime, setNoTime] = useState(false);
  const submit = (): void => {
    const isTaken = air.keep(warmth, damp, when);
    setNoTime(!isTaken);
    if (!isTaken) return;
    setWarmth("");
    setDamp("");
    setWhen("");
  };
  const { wrongAt, wrong } = air.refused;
  return (
    <Screen title="Air" when={room.name} within="/more" isSeam={false} tray={<KeepTray isReady={warmth.trim() !== "" || damp.trim() !== ""} onKeep={submit} />}>
      <SaidLine mark="" saying={air.saying} />
      {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
      <form class={css.stack} onSubmit={(event) => { event.preventDefault(); submit(); }}>
        <div class={css.fields}>
          <Field label={`Warmth, °${units.temperature.toUpperCase()}`} name="air_c" inputMode="decimal" value={warmth} onType={setWarmth} wrong={wrongAt("#/air_c")} />
          <Field label="Damp of the air, %" name="humidity_fraction" inputMode="decimal" value={damp} onType={setDamp} wrong={wrongAt("#/humidity_fraction")} />
        </div>
        <Field label="When, if it was not just now" type="datetime-local" name="happened_at" value={when} onType={setWhen} wrong={isNoTime ? "That is no time that has been." : null} />
        <button type="submit" hidden />
      </form>
      {rooms}
      <Readings air={air} />
    </Screen>
  );
}

const asText = (kept: unknown): string => (typeof kept === "number" || typeof kept === "string" ? String(kept).replace(/ (?:°[CF]|%)$/, "") : "");

function KeepTray({ isReady, onKeep }: { isReady: boolean; onKeep: () => void }) {
  return <Tray><MainAct isDisabled={!isReady} onPress={onKeep}>Keep</MainAct></Tray>;
}

const USES: Record<ReadingRow["use"], string> = { used: "used", left_out: "left out", asked: "asked about" };

function Readings({ air }: { air: RoomAir }) {
  const zone = useZone();
  const now = useNow();
  const { units } = useSession().membership.member;
  if (air.readings.length === 0) return null;
  return (
    <section class={css.section} aria-label="Last readings">
      <h2>Last readings</h2>
      <p class={css.note}>A meter that shows 3 % too damp makes drying look 6 % longer at 50 %, 10 % at 65 %, and loses the date near 80 %; 1 °C too warm, 4 % shorter. Hold it beside another one.</p>
      {air.readings.map((reading) => (
        <div key={reading.id}>
          <p>
            <b>{joinFacts(reading.air_c !== null && temperatureWords(reading.air_c, units), reading.humidity_fraction !== null && percent(reading.humidity_fraction))}</b>
            <br />
            <span class={css.note}>{dayAndClock(new Date(reading.taken_at), now, zone)} · {USES[reading.use]}{reading.why && `: ${reading.why.replaceAll("_", " ")}`}</span>
          </p>
          {(reading.use === "asked" || reading.did_you_mean_c !== null) && <Asked reading={reading} air={air} />}
        </div>
      ))}
    </section>
  );
}

/** An odd figure is kept, and the person says what it meant. What no room can have is never taken as given. */
function Asked({ reading, air }: { reading: ReadingRow; air: RoomAir }) {
  const isHot = reading.did_you_mean_c !== null;
  return (
    <Pair>
      <Act onPress={() => { air.answer(reading, isHot ? "fahrenheit" : "percent", isHot ? "it was °F" : "it was per cent"); }}>{isHot ? "It was °F" : "It was %"}</Act>
      {reading.use === "asked" && <Act onPress={() => { air.answer(reading, "as_given", "it is as given"); }}>As given</Act>}
      <Act onPress={() => { air.answer(reading, "leave_out", "leave it out"); }}>Leave it out</Act>
    </Pair>
  );
}

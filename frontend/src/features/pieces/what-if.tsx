/** What if: another room, another cover, another thickness, and the dates beside those as it is. Reckoned by the studio, so it needs a signal. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { Quantiles } from "../../api/shapes";
import type { DryingAnswer, DryingSum } from "../../api/shapes-pieces";
import { dayAndClock } from "../../domain/clock";
import { joinFacts, length, percent, temperature, upperFirst } from "../../domain/format";
import { Choice, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Select } from "../../ui/select";
import { Screen } from "../common/screen";
import { useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { DryingCurve } from "./drying-curve";
import { likely } from "./drying-words";
import { COVERS } from "./stage";
import { useDrying, usePieceScreen } from "./use-piece";
import { useWhatIf } from "./use-what-if";
import type { Reckoned, RoomChoice, WhatIf } from "./use-what-if";
import { CLAYS, SHAPES } from "./what-if-asked";
import type { Clay } from "./what-if-asked";
import css from "../studio/studio.module.css";

const spoken = (name: string): string => upperFirst(name.replaceAll("_", " "));

/** Of no piece: something that would be pressed now. */
export function WhatIfScreen() {
  return <Ready drying={null} placeId={null} within="/more" />;
}

export function PieceWhatIfScreen({ id = "" }: { id?: string }) {
  const screen = usePieceScreen(id);
  const drying = useDrying(id);
  return (
    <WhenHeard title="What if" within={`/pieces/${id}`} screen={screen}>
      {({ piece }) => (drying === null
        ? <Screen title="What if" when={piece.mark} within={`/pieces/${id}`} isSeam={false}><p>The drying of {piece.mark} has not been heard yet.</p></Screen>
        : <Ready key={id} drying={drying} placeId={piece.place?.id ?? null} within={`/pieces/${id}`} mark={piece.mark} />)}
    </WhenHeard>
  );
}

function Ready({ drying, placeId, within, mark }: { drying: DryingAnswer | null; placeId: string | null; within: string; mark?: string }) {
  const now = useNow();
  const [opened] = useState(now);
  const asked = useWhatIf(drying, placeId, opened);
  const { units } = useSession().membership.member;
  const { claim, known } = asked;
  const wrong = claim.wrong ?? claim.errors.find(({ pointer }) => pointer !== "#/thickest_mm")?.detail;
  return (
    <Screen title="What if" when={mark} within={within} isSeam={false} tray={<Tray><MainAct isDisabled={claim.isAsking} onPress={() => { void asked.reckon(now); }}>{claim.isAsking ? "Reckoning…" : "Reckon"}</MainAct></Tray>}>
      {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
      {asked.reckoned && <Dates reckoned={asked.reckoned} now={now} />}
      <p>The studio reckons this: it needs a signal. Nothing is kept and nothing moves.</p>
      <div class={css.stack}>
        {drying === null && <Clayed asked={asked} />}
        <Rooms asked={asked} isPiece={drying !== null} />
        <Choice legend="Covered" name="cover" options={COVERS} chosen={asked.cover} onChoose={asked.setCover} />
        <Field label={`Thickness, ${units.length}; ${length(known.thickest_mm, units)} as it is`} name="thickest_mm" inputMode="decimal" value={asked.thickness} onType={asked.setThickness} wrong={claim.wrongAt("#/thickest_mm")} />
      </div>
    </Screen>
  );
}

function Clayed({ asked: { known, setClay, setShape } }: { asked: WhatIf }) {
  return (
    <>
      <Select label="Clay" name="clay" options={CLAYS.map((value) => ({ value, words: spoken(value) }))} chosen={known.clay} none="Red earthenware" onChoose={(value) => { setClay(value === "" ? "red_earthenware" : value as Clay); }} />
      <Choice legend="What is thickest" name="shape" options={SHAPES} chosen={known.shape} onChoose={setShape} />
    </>
  );
}

function Rooms({ asked: { rooms, here, there, known }, isPiece }: { asked: WhatIf; isPiece: boolean }) {
  const isShut = known.shutFrom_h !== null;
  const options = rooms.map(({ id, name }) => ({ value: id, words: name }));
  return (
    <>
      <Select label={isPiece ? "Stands in" : "In the air of"} name="here" options={options} chosen={here.id} none="15 °C and 65 %, assumed" onChoose={here.choose} />
      <AirNow room={here} />
      {isShut && <p class={css.note}>It stands shut in a cupboard there.</p>}
      <Select label="Put in" name="there" options={options} chosen={there.id} none="Left where it is" onChoose={there.choose} />
      <AirNow room={there} />
    </>
  );
}

function AirNow({ room: { id, air } }: { room: RoomChoice }) {
  const { units } = useSession().membership.member;
  if (id === "") return null;
  return <p class={css.note}>{air ? joinFacts(temperature(air.air_c, units), percent(air.humidity_fraction), "at the last look") : "No reading there: 15 °C and 65 %, assumed."}</p>;
}

const ROWS: readonly { label: string; of: (sum: DryingSum) => Quantiles | null | undefined }[] = [
  { label: "Leather-hard", of: ({ windows }) => windows?.join.opens },
  { label: "Too stiff to join", of: ({ windows }) => windows?.join.closes },
  { label: "Done shrinking", of: ({ windows }) => windows?.shrinkage_ended },
  { label: "Perhaps dry", of: ({ windows }) => windows?.bisque },
];

function Dates({ reckoned: { asItIs, changed }, now }: { reckoned: Reckoned; now: Date }) {
  const zone = useZone();
  const top = useRef<HTMLElement>(null);
  // They stand above the form, and the thumb was below it.
  useEffect(() => { top.current?.scrollIntoView(); }, [changed]);
  const words = (said: Quantiles | null | undefined): string => (said?.p50 ? dayAndClock(new Date(said.p50), now, zone) : "not within three weeks");
  return (
    <section ref={top} class={css.section} aria-label="Dates">
      <h2>If so</h2>
      {ROWS.map(({ label, of }) => (
        <p key={label}>
          <b>{label}: {words(of(changed))}</b>
          <br />
          <span class={css.note}>{joinFacts(likely(of(changed), now, zone), `as it is: ${words(of(asItIs))}`)}</span>
        </p>
      ))}
      {changed.curve && <DryingCurve drying={asDrying(changed)} now={now} />}
      {changed.warnings.map(({ code, detail }) => <p key={code}>{detail}</p>)}
      <p class={css.note}>A studio guess, both reckoned alike from the clay’s first figures: what this studio learned is not in them.</p>
      <details>
        <summary>how it was reckoned</summary>
        <ul>{changed.working.map((line) => <li key={line}>{line}</li>)}<li>{changed.source}</li></ul>
      </details>
    </section>
  );
}

/** The sum in the shape of a piece's drying, for the picture. */
function asDrying({ begins_at, curve, windows, unreachable, confidence, source }: DryingSum): DryingAnswer {
  return {
    at: begins_at, journal_seq: 0, computed_at: begins_at, verdict: "", sentence: "", curve, windows, unreachable, confidence,
    evidence: [], weighed: null, covering: { cracking: null, steps: [], meeting: null, thin: null }, inputs: {}, assumed: [], sources: [source],
  };
}

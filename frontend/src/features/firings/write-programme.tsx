/** Programmes: the studio's ways to fire, leg by leg; and one written down, or changed. */
import { useLocation } from "preact-iso";
import { useState } from "preact/hooks";
import type { Programme } from "../../api/shapes-firings";
import type { Call } from "../../api/client";
import type { Units } from "../../domain/format";
import { Act, Choice, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { hasGrant, studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import { useDraft } from "../common/use-draft";
import { useFirstFault } from "../common/use-first-fault";
import { WhenHeard } from "../common/when-heard";
import { ConePicker } from "./cone-picker";
import css from "./kilns.module.css";
import { NO_LEG, NO_PROGRAMME, programmeChanges, programmeFields, programmeTyped } from "./programme-typed";
import type { LegTyped, ProgrammeTyped } from "./programme-typed";
import { FIRINGS, useProgrammes } from "./slot-fields";

const HOME = "/programmes";

export function NewProgrammeScreen() {
  const { again } = useProgrammes();
  return <WriteProgramme programme={null} again={again} />;
}

export function ChangeProgrammeScreen({ id = "" }: { id?: string }) {
  const screen = useProgrammes();
  return (
    <WhenHeard title="Programme" within="/kilns" screen={screen}>
      {({ results }) => {
        const programme = results.find((one) => one.id === id);
        if (programme === undefined) return <Screen title="Programme" within="/kilns" isSeam={false}><p>No such programme here.</p></Screen>;
        return <WriteProgramme key={id} programme={programme} again={screen.again} />;
      }}
    </WhenHeard>
  );
}

function WriteProgramme({ programme: given, again }: { programme: Programme | null; again: () => void }) {
  // As it stood when the form was opened: what somebody else changes meanwhile is refused, not written over.
  const [programme] = useState(given);
  const { membership } = useSession();
  const { units } = membership.member;
  const { route } = useLocation();
  const before: ProgrammeTyped = programme === null ? NO_PROGRAMME : programmeTyped(programme, units);
  const { draft, change, clear } = useDraft<ProgrammeTyped>(programme === null ? "programme" : `programme ${programme.id}`, () => before);
  const { claim, isAsking, errors, wrong, wrongAt } = useClaim();
  useFirstFault(errors);
  const path = (end: string): string => studioPath(membership.studio.slug, `programmes/${end}`);
  const callOf = (): Call => (programme === null
    ? { method: "POST", path: path(""), body: { ...envelope(), ...programmeFields(draft, units) } }
    : { method: "PATCH", path: path(`${programme.id}/`), body: { ...envelope(), ...programmeChanges(before, draft, units) }, headers: { "If-Match": `"${String(programme.revision)}"` } });
  const send = async (): Promise<void> => {
    if ((await claim(callOf())) === null) return;
    clear();
    again();
    route(HOME);
  };
  const mayPlan = hasGrant(membership, "plan_firings");
  const set = (place: number, part: Partial<LegTyped>): void => { change({ legs: draft.legs.map((leg, here) => (here === place ? { ...leg, ...part } : leg)) }); };
  const tray = (
    <Tray>
      <MainAct isDisabled={isAsking || !mayPlan} onPress={() => void send()}>{isAsking ? "Asking" : programme === null ? "Write it down" : "Change it"}</MainAct>
      <Act onPress={() => { clear(); route(HOME); }}>Let it go</Act>
    </Tray>
  );
  const degrees = `°${units.temperature.toUpperCase()}`;
  return (
    <Screen title={programme === null ? "New programme" : programme.name} when={programme === null ? undefined : "change"} within="/kilns" isSeam={false} tray={tray}>
      {!mayPlan && <p>Whoever plans firings writes programmes down: a technician, or an owner.</p>}
      {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
      <Field label="Name" name="name" most={60} value={draft.name} onType={(name) => { change({ name }); }} wrong={wrongAt("#/name")} />
      <Choice legend="For which firing" name="kind" options={FIRINGS} chosen={draft.kind} onChoose={(kind) => { change({ kind }); }} />
      <ConePicker cone={draft.cone} onPick={(cone) => { change({ cone }); }} units={units} wrong={wrongAt("#/cone")} />
      <Field label={`Top, ${degrees}`} name="top_c" inputMode="decimal" value={draft.top} onType={(top) => { change({ top }); }} wrong={wrongAt("#/top_c")} />
      {draft.legs.map((leg, place) => <Leg key={place} leg={leg} place={place} units={units} set={(part) => { set(place, part); }} drop={() => { change({ legs: draft.legs.filter((_, here) => here !== place) }); }} wrongAt={wrongAt} />)}
      <Act onPress={() => { change({ legs: [...draft.legs, NO_LEG] }); }}>One more leg…</Act>
      <p class={css.said}>Legs are what the controller is told. Natch draws them beside what was read, and sets no controller.</p>
    </Screen>
  );
}

function Leg({ leg, place, units, set, drop, wrongAt }: { leg: LegTyped; place: number; units: Units; set: (part: Partial<LegTyped>) => void; drop: () => void; wrongAt: (pointer: string) => string | null }) {
  const at = `#/segments/${String(place)}`;
  const degrees = `°${units.temperature.toUpperCase()}`;
  return (
    <fieldset class={css.part}>
      <legend>{`Leg ${String(place + 1)}`}</legend>
      <Field label={`To, ${degrees}`} name={`${at}/to_c`} inputMode="decimal" value={leg.to} onType={(to) => { set({ to }); }} wrong={wrongAt(`${at}/to_c`)} />
      <div class={css.two}>
        <Field label={`${degrees} an hour; empty: full power`} name={`${at}/rate_c_per_h`} inputMode="decimal" value={leg.rate} onType={(rate) => { set({ rate }); }} wrong={wrongAt(`${at}/rate_c_per_h`)} />
        <Field label="Then held, min" name={`${at}/hold_min`} inputMode="numeric" value={leg.hold} onType={(hold) => { set({ hold }); }} wrong={wrongAt(`${at}/hold_min`)} />
      </div>
      <Act spoken={`Take leg ${String(place + 1)} out`} onPress={drop}>Take it out</Act>
    </fieldset>
  );
}

/** What is asked about a mould: its weight in the hand; a booking, a part or its detail in place of the screen. */
import { useState } from "preact/hooks";
import { REASON_MOST } from "../../domain/limits";
import { asTyped } from "../../domain/typed";
import { Act, Choice, Field, MainAct } from "../../ui/act";
import { Pair, Tray } from "../../ui/frame";
import { isTooLong } from "../../ui/room-left";
import { PhotoField } from "../common/photos";
import { Screen } from "../common/screen";
import { useSession } from "../common/session";
import type { TakenPhoto } from "../common/taken-photo";
import { CrumbCheckLine } from "./crumbs";
import css from "./mould.module.css";
import { partNote } from "./mould-words";
import { PourSheet } from "./pour-sheet";
import type { MouldNow } from "./use-mould";
import type { MouldScreenState, MouldSheet } from "./use-mould-screen";

interface Asked {
  mould: MouldNow;
  screen: MouldScreenState;
}

export function MouldTray({ mould: { set }, screen }: Asked) {
  if (screen.sheet === "weigh" || screen.weighRefused.act !== null) return <WeighTray key={screen.weighRefused.act?.id} mould={{ set }} screen={screen} />;
  const hasCasting = set.casting !== null;
  return (
    <Tray isDead={screen.saying.isDead} {...(hasCasting ? {} : { mark: set.label, reason: "nothing is poured yet" })}>
      <MainAct isDisabled={!screen.may.weigh || !hasCasting} wide={`Weigh ${set.label}`} onPress={() => { screen.open("weigh"); }}>Weigh</MainAct>
      <Act isDisabled={!screen.may.book} onPress={() => { screen.open("book"); }}>Book…</Act>
    </Tray>
  );
}

function WeighTray({ mould: { set }, screen }: { mould: Pick<MouldNow, "set">; screen: MouldScreenState }) {
  const { units } = useSession().membership.member;
  const { weighRefused } = screen;
  const [typed, type] = useState(asTyped(weighRefused.act?.body["mass_g"], units.mass));
  const [isDry, setDry] = useState(weighRefused.act?.body["is_dry"] === true);
  return (
    <Tray isFree>
      <form class={css.stack} onSubmit={(event) => { event.preventDefault(); if (typed.trim()) screen.weigh(typed, isDry); }}>
        <Field
          label={`${set.label} without clay, ${units.mass === "g" ? "g" : "lb oz"}`} name="mass_g" value={typed} onType={type}
          inputMode={units.mass === "g" ? "decimal" : "text"} wrong={weighRefused.wrongAt("#/mass_g") ?? weighRefused.wrong}
        />
        <label class={css.check}>
          <input type="checkbox" checked={isDry} onChange={(event) => { setDry(event.currentTarget.checked); }} />
          It is dry: the weight no longer changes
        </label>
        <Pair>
          <MainAct type="submit" isDisabled={!typed.trim()}>Keep</MainAct>
          <Act onPress={() => { weighRefused.letGo(); screen.open("none"); }}>Not now</Act>
        </Pair>
      </form>
    </Tray>
  );
}

const TITLES: Record<Exclude<MouldSheet, "none" | "weigh">, string> = { book: "book", part: "a part", look: "its detail", pour: "cast again" };

export function MouldSheets({ mould, screen, sheet }: Asked & { sheet: MouldSheet }) {
  const close = (): void => { screen.bookRefused.letGo(); screen.pourRefused.letGo(); screen.open("none"); };
  if (sheet === "none" || sheet === "weigh") return null;
  return (
    <Screen title={mould.set.label} when={TITLES[sheet]} within="/bench" isSeam={false} tray={<Tray><Act onPress={close}>Not now</Act></Tray>}>
      {sheet === "book" && <Book screen={screen} />}
      {sheet === "part" && <PartTold mould={mould} screen={screen} />}
      {sheet === "look" && <Look mould={mould} screen={screen} />}
      {sheet === "pour" && <PourSheet key={screen.pourRefused.act?.id} mould={mould} screen={screen} />}
    </Screen>
  );
}

function Book({ screen }: { screen: MouldScreenState }) {
  const [from, setFrom] = useState("");
  const [until, setUntil] = useState("");
  const [isNoTime, setNoTime] = useState(false);
  const { wrongAt, wrong } = screen.bookRefused;
  return (
    <form class={css.stack} onSubmit={(event) => { event.preventDefault(); setNoTime(!screen.book(from, until)); }}>
      {wrong && <p role="alert"><b>{wrong}</b></p>}
      <Field label="From" name="from_at" type="datetime-local" value={from} onType={setFrom} wrong={wrongAt("#/from_at") ?? (isNoTime && from === "" ? "Say from when." : null)} />
      <Field label="Until" name="until_at" type="datetime-local" value={until} onType={setUntil} wrong={wrongAt("#/until_at") ?? (isNoTime && until === "" ? "Say until when." : null)} />
      <p>A booking is asked for: who asked first has it. Without signal it waits on this phone, and the mould may be gone by then.</p>
      <MainAct type="submit">Book it</MainAct>
    </form>
  );
}

const KINDS = [
  { value: "chipped", words: "Chipped" }, { value: "missing", words: "Missing" }, { value: "out_of_use", words: "Out of use" },
  { value: "mended", words: "Mended" }, { value: "found", words: "Found" },
] as const;
const ANYBODY: readonly string[] = ["chipped", "missing"];

function PartTold({ mould: { set }, screen }: Asked) {
  const [partId, choosePart] = useState(set.parts[0]?.id ?? null);
  const [kind, choose] = useState<(typeof KINDS)[number]["value"] | null>(null);
  const [reason, type] = useState("");
  const kinds = KINDS.filter((one) => screen.may.edit || ANYBODY.includes(one.value));
  const part = set.parts.find((one) => one.id === partId);
  const words = KINDS.find((one) => one.value === kind)?.words.toLowerCase() ?? "";
  const wantsReason = kind === "out_of_use" && reason.trim() === "";
  return (
    <>
      <Choice legend="Part" name="part" options={set.parts.map((one) => ({ value: one.id, words: one.name, note: partNote(one) }))} chosen={partId} onChoose={choosePart} />
      <Choice legend="It is" name="kind" options={kinds} chosen={kind} onChoose={choose} />
      <Field label="What is wrong with it, or how it was mended" name="reason" value={reason} onType={type} most={REASON_MOST} />
      {kind === "chipped" && <CrumbCheckLine found={screen.crumbs} />}
      {wantsReason && <p>Say why it is out of use: the next who wants it will ask.</p>}
      <MainAct isDisabled={!part || kind === null || wantsReason || isTooLong(reason, REASON_MOST)} onPress={() => { if (part && kind) screen.tell(part, kind, words, reason.trim()); }}>
        {part && kind ? `${part.name}: ${words}` : "Say which, and what"}
      </MainAct>
    </>
  );
}

const FINDINGS = [
  { value: "crisp", words: "Crisp" }, { value: "softening", words: "Softening" }, { value: "worn", words: "Worn" }, { value: "chipped", words: "Chipped" },
] as const;

function Look({ mould: { set }, screen }: Asked) {
  const [photos, change] = useState<TakenPhoto[]>([]);
  const [partId, choosePart] = useState(set.parts[0]?.id ?? null);
  const part = set.parts.find((one) => one.id === partId);
  return (
    <>
      <Choice legend="Part" name="part" options={set.parts.map((one) => ({ value: one.id, words: one.name }))} chosen={partId} onChoose={choosePart} />
      <PhotoField photos={photos} onChange={change} />
      <p>How is the finest line of it?</p>
      <div class={css.two}>
        {FINDINGS.map((finding) => (
          <Act key={finding.value} isDisabled={!part} onPress={() => { if (part) screen.look(part, finding.value, finding.words.toLowerCase(), photos); }}>{finding.words}</Act>
        ))}
      </div>
    </>
  );
}

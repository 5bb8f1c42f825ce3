/** Press a mould: how damp it is, who has it next, what it makes, from which block, how many. */
import { clock, day } from "../../domain/clock";
import { count, joinFacts } from "../../domain/format";
import { Act, Choice, Count, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Fact, Mark } from "../../ui/seam";
import { Standing } from "../../ui/standing";
import { Toggles } from "../../ui/toggles";
import { Cautions } from "../common/cautions";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { drynessWord, nextPressWords } from "./dryness";
import { DrynessBar } from "./dryness-bar";
import css from "./mould.module.css";
import { blockOptions, nextHolder, partNote } from "./mould-words";
import { askedWords } from "./press-plan";
import { useMouldNow } from "./use-mould";
import type { MouldNow } from "./use-mould";
import { usePress } from "./use-press";
import type { Press } from "./use-press";

const HOME = "/bench";

export function PressScreen({ id = "" }: { id?: string }) {
  const screen = useMouldNow(id);
  return <WhenHeard title="Press" within={HOME} screen={screen}>{(value, heardAt) => <Ready key={id} mould={value} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ mould, heardAt }: { mould: MouldNow; heardAt: Date | null }) {
  const zone = useZone();
  const now = useNow();
  const { membership } = useSession();
  const press = usePress(mould);
  const { set, readiness, bar } = mould;
  const { casting, next_booking, owner } = set;
  if (casting === null) return <NothingPoured label={set.label} setId={set.id} />;
  const whose = owner && owner.id !== membership.member.id ? `${owner.first_name}’s mould` : null;
  const cautions = [...readiness.cautions, ...(press.blocks.find((block) => block.id === press.blockId)?.cautions ?? [])];
  return (
    <Screen title="Press" when={`generation ${String(casting.generation)}`} within={HOME} heardAt={heardAt} tray={<PressTray press={press} label={set.label} zone={zone} />}>
      <SaidLine mark={set.label} saying={press.saying} />
      <Standing
        drawing={<a class={css.mark} href={`/moulds/${set.id}`}><Mark mark={set.label} noun={set.makes.role} /></a>}
        verdict={drynessWord(readiness.dryness)} evidence={joinFacts(nextPressWords(readiness.dryness), whose)}
      />
      <DrynessBar data={bar} />
      {next_booking && <Fact label="next" natch="hand" value={nextHolder(next_booking, membership.member.id, now, zone)} note={`until ${clock(new Date(next_booking.until_at), zone)}, ${day(new Date(next_booking.until_at), now, zone)}`} />}
      <Fact label="makes" value={makesWords(press, set.makes.role)} note={set.makes.design_name} />
      {readiness.advice.code !== "press" && <Fact label="advice" note={readiness.advice.reason} />}
      <Cautions words={cautions} />
      <PressForm press={press} mould={mould} now={now} zone={zone} />
    </Screen>
  );
}

function makesWords({ targets }: Press, role: string): string {
  if (targets.length === 0) return role;
  return `${targets.map((target) => target.mark).join(", ")}, ${role}`;
}

function PressForm({ press, mould: { set }, now, zone }: { press: Press; mould: MouldNow; now: Date; zone: string }) {
  const { waiting, forId } = press;
  const pieces = [...waiting.slice(0, 5).map((piece) => ({ value: piece.id, words: piece.mark, note: piece.state_words })), { value: "new", words: "A new piece" }];
  return (
    <div class={css.form}>
      {waiting.length > 0 && <Choice legend="For" name="piece" options={pieces} chosen={forId ?? "new"} onChoose={(id) => { press.chooseFor(id === "new" ? null : id); }} />}
      {press.wantsMark && <Field label="No number is left on this phone. Cut in the clay:" name="mark" most={60} value={press.typedMark} onType={press.typeMark} />}
      {press.blocks.length > 0 && <Choice legend="From block" name="block" options={blockOptions(press.blocks, now, zone)} chosen={press.blockId} onChoose={press.chooseBlock} />}
      {set.parts.length > 1 && (
        <Toggles
          legend="Mould parts" chosen={press.partIds} onToggle={press.togglePart}
          options={set.parts.map((part) => ({ value: part.id, words: part.name, note: partNote(part) }))}
        />
      )}
      <Count label="How many" figure={press.count} least={1} most={24} onCount={press.setCount} />
    </div>
  );
}

function PressTray({ press, label, zone }: { press: Press; label: string; zone: string }) {
  const { targets, saying, before } = press;
  const marks = targets.length > 3 ? count(targets.length, "piece", "pieces") : targets.map((target) => target.mark).join(", ");
  if (before !== null) {
    return (
      <Tray mark={before.count > 3 ? count(before.count, "piece", "pieces") : before.marks} reason={askedWords(before, label, targets.length, zone)}>
        <MainAct onPress={press.another}>Another: {marks}</MainAct>
        <Act onPress={press.notAnother}>No, once</Act>
      </Tray>
    );
  }
  const isReady = targets.length === press.count && press.partIds.size > 0;
  return (
    <Tray isDead={saying.isDead} {...(isReady ? {} : { mark: label, reason: press.partIds.size === 0 ? "no mould part is chosen" : "no number yet" })}>
      <MainAct isDisabled={!isReady} onPress={press.press}>Pressed {marks}</MainAct>
    </Tray>
  );
}

function NothingPoured({ label, setId }: { label: string; setId: string }) {
  return (
    <Screen title="Press" within={HOME} tray={<Tray><MainAct href={`/moulds/${setId}`}>Open {label}</MainAct></Tray>}>
      <Fact label={label} natch="done" value="Nothing poured yet." note="A casting has to be in use before it can be pressed." />
    </Screen>
  );
}

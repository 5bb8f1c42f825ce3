/** What one is to be told: due, put off, done. Each is answered, put off, or let go; nothing rings twice for one cause. */
import { useState } from "preact/hooks";
import type { Reminder, ReminderPage } from "../../api/shapes-studio";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import css from "./studio.module.css";
import { reminderWords, snoozes, wayOf } from "./due-view";
import { useDue, useReminders } from "./use-due";
import type { Due } from "./use-due";

const TITLE = "Due";

export function DueScreen() {
  const screen = useReminders("due");
  return <WhenHeard title={TITLE} within="/more" screen={screen}>{(value, heardAt) => <Ready page={value} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ page, heardAt }: { page: ReminderPage; heardAt: Date | null }) {
  const zone = useZone();
  const now = useNow();
  const due = useDue(page);
  return (
    <Screen title={TITLE} within="/more" when={due.due.length > 0 ? `${String(due.due.length)} for you` : undefined} heardAt={heardAt} tray={<DueTray due={due} now={now} zone={zone} />}>
      <SaidLine mark={due.saidOf} saying={due.saying} />
      <Block name="Due" count={due.due.length}>
        {due.due.map((one) => <Row key={one.id} {...reminderWords(one, now, zone)} isChosen={due.chosen?.id === one.id} onChoose={() => { due.choose(one.id); }} />)}
      </Block>
      {due.due.length === 0 && <Fact label="" natch="done" value="Nothing wants you now." note="Quiet is the usual state of this place." />}
      <Others state="snoozed" name="Put off" />
      <Others state="done" name="Done with" />
    </Screen>
  );
}

function Others({ state, name }: { state: "snoozed" | "done"; name: string }) {
  const zone = useZone();
  const now = useNow();
  const screen = useReminders(state);
  if (screen.state !== "ready" || screen.value.results.length === 0) return null;
  const shown = screen.value.results.slice(0, state === "done" ? 5 : 50);
  return (
    <Block name={name} count={screen.value.results.length}>
      {shown.map((one) => {
        const way = wayOf(one);
        return <Row key={one.id} {...reminderWords(one, now, zone)} {...(way ? { href: way } : {})} />;
      })}
    </Block>
  );
}

function DueTray({ due, now, zone }: { due: Due; now: Date; zone: string }) {
  const [snoozedId, snooze] = useState<string | null>(null);
  const { chosen } = due;
  if (chosen === null) return null;
  if (snoozedId === chosen.id) return <SnoozeTray due={due} chosen={chosen} now={now} zone={zone} close={() => { snooze(null); }} />;
  const way = wayOf(chosen);
  return (
    <Tray isDead={due.saying.isDead} {...(way ? { mark: markOf(chosen), markHref: way } : {})} reason={chosen.asks === "let_go" ? "put off three times: let it go?" : chosen.title}>
      <MainAct spoken={`Done: ${chosen.title}`} onPress={() => { due.answer(chosen, "done"); }}>Done</MainAct>
      <Act spoken={`Put off: ${chosen.title}`} onPress={() => { snooze(chosen.id); }}>Put off…</Act>
      <Act spoken={`Let go: ${chosen.title}`} onPress={() => { due.answer(chosen, "let_go"); }}>Let go</Act>
    </Tray>
  );
}

const markOf = ({ objects: [object] }: Reminder): string => (object && object.mark !== "" && object.mark.length <= 8 ? object.mark : "Open it");

function SnoozeTray({ due, chosen, now, zone, close }: { due: Due; chosen: Reminder; now: Date; zone: string; close: () => void }) {
  return (
    <Tray reason="until when?" isFree>
      <div class={css.two}>
        {snoozes(now, zone).map(({ words, until }) => (
          <Act key={words} spoken={`${chosen.title}: put off, ${words}`} onPress={() => { close(); due.answer(chosen, "snooze", until); }}>{words}</Act>
        ))}
        <div class={css.whole}><Act onPress={close}>Not now</Act></div>
      </div>
    </Tray>
  );
}

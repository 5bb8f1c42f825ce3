import { useState } from "preact/hooks";
import type { Reminder, ReminderPage } from "../../api/shapes-studio";
import { useDegrees } from "../common/use-degrees";
import { useKeptActs } from "../common/use-outbox";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useScreen } from "../common/use-screen";
import { answersOf, stillDue } from "./due-view";

export type Answer = "done" | "snooze" | "let_go";
const SAID: Record<Answer, string> = { done: "Done", snooze: "Put off", let_go: "Let go" };

export interface Due {
  due: readonly Reminder[];
  chosen: Reminder | null;
  choose: (id: string) => void;
  saying: Saying;
  /** The mark or title the last answer was about. */
  saidOf: string;
  answer: (reminder: Reminder, answer: Answer, until?: Date) => void;
}

export function useReminders(state: "due" | "snoozed" | "done"): ReturnType<typeof useScreen<ReminderPage>> {
  const say = useDegrees();
  const screen = useScreen<ReminderPage>(`reminders/?state=${state}`);
  if (screen.state !== "ready") return screen;
  return { ...screen, value: { ...screen.value, results: screen.value.results.map((one) => ({ ...one, title: say(one.title) })) } };
}

export function useDue(page: ReminderPage): Due {
  const seq = page.journal_seq ?? 0;
  const saying = useSaid(seq);
  const due = stillDue(page.results, answersOf(useKeptActs()));
  const [chosenId, choose] = useState<string | null>(null);
  const [saidOf, setSaidOf] = useState("");
  return {
    due, saying, saidOf,
    chosen: due.find((one) => one.id === chosenId) ?? due[0] ?? null,
    choose,
    answer: (reminder, answer, until) => {
      const mark = reminder.objects[0]?.mark ?? "";
      setSaidOf(mark.length <= 5 ? mark : "");
      const fields = { answer, ...(until ? { until: until.toISOString() } : {}) };
      const about = { reminder_id: reminder.id, answer };
      void saying.say({ path: `reminders/${reminder.id}/answers/`, fields, basedOn: seq, verb: "answered_reminder", about, words: `${reminder.title}: ${SAID[answer].toLowerCase()}` }, SAID[answer], false);
    },
  };
}

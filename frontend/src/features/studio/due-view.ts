/** What one is told: due, put off, done; with what was answered on this phone laid over it. Pure. */
import type { Reminder } from "../../api/shapes-studio";
import { dayAndClock } from "../../domain/clock";
import { joinFacts } from "../../domain/format";
import { midnightOf } from "../../domain/plot";
import type { KeptAct } from "../../offline/kept-act";
import type { NatchKind } from "../../ui/natch";

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** Answers still on their way, by reminder. An undone answer is none. */
export function answersOf(acts: readonly KeptAct[]): Map<string, KeptAct> {
  const live = acts.filter((act) => act.state !== "parked");
  const undone = new Set(live.filter((act) => act.verb === "retracted").map((act) => act.body["corrects"]));
  return new Map(live.flatMap((act) => {
    const id = act.about["reminder_id"];
    return act.verb === "answered_reminder" && id !== undefined && !undone.has(act.id) ? [[id, act] as const] : [];
  }));
}

export function stillDue(reminders: readonly Reminder[], answers: ReadonlyMap<string, KeptAct>): Reminder[] {
  return reminders.filter((one) => !answers.has(one.id));
}

export interface SnoozeOption {
  words: string;
  until: Date;
}

/** Half an hour, two hours, tomorrow at half past seven, a week: the usual ways to put off. */
export function snoozes(now: Date, zone: string): SnoozeOption[] {
  const morning = (days: number): Date => {
    const midnight = midnightOf(new Date(midnightOf(now, zone).getTime() + (24 * days + 12) * HOUR_MS), zone);
    return new Date(midnight.getTime() + 7.5 * HOUR_MS);
  };
  return [
    { words: "30 min", until: new Date(now.getTime() + 30 * MINUTE_MS) },
    { words: "2 hours", until: new Date(now.getTime() + 2 * HOUR_MS) },
    { words: "Tomorrow", until: morning(1) },
    { words: "A week", until: morning(7) },
  ];
}

export interface ReminderWords {
  mark: string;
  natch: NatchKind;
  verdict: string;
  evidence: string;
  spoken: string;
}

export function reminderWords(reminder: Reminder, now: Date, zone: string): ReminderWords {
  const due = new Date(reminder.due_at);
  const isPutOff = reminder.state === "snoozed" && reminder.snoozed_until !== null;
  const when = isPutOff ? `again ${dayAndClock(new Date(reminder.snoozed_until ?? reminder.due_at), now, zone)}` : dayAndClock(due, now, zone);
  const isOver = ["done", "let_go", "withdrawn"].includes(reminder.state);
  const natch: NatchKind = isOver ? "done" : isPutOff ? "next" : reminder.class === "A" ? "past" : "hand";
  const ended = { done: "done", let_go: "let go", withdrawn: "no longer so" } as Record<string, string>;
  const evidence = joinFacts(reminder.body, isOver ? ended[reminder.state] : when);
  // A long mark would leave no room for the words.
  const [object] = reminder.objects;
  const mark = object && reminder.objects.length === 1 && object.mark.length <= 5 ? object.mark : "";
  return { mark, natch, verdict: reminder.title, evidence, spoken: `${reminder.title}. ${reminder.body} ${when}` };
}

/** Only ways within the app are followed. */
export function wayOf({ link }: Reminder): string | null {
  return /^\/(?!\/)/.test(link) ? link : null;
}

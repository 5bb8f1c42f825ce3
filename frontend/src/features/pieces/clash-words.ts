/** Two stories in words: what each says, who said it, and what each answer is called. */
import type { ClashAct, ClashAnswer } from "../../api/shapes-pieces";
import { clock, date, dayAndClock } from "../../domain/clock";
import { upperFirst } from "../../domain/format";
import type { Half } from "../../ui/halves";

export interface When {
  now: Date;
  zone: string;
}

const LATE_MS = 10 * 60_000;

const isLate = (act: ClashAct): boolean => Date.parse(act.written_at) - Date.parse(act.happened_at) > LATE_MS;

/** `two phones, neither had signal`: why nobody noticed. */
export function whyTwo([one, other]: readonly ClashAct[]): string {
  if (!one || !other) return "";
  const phones = one.device === other.device && one.member.id === other.member.id ? "one phone" : "two phones";
  const late = [one, other].filter(isLate).length;
  if (late === 2) return `${phones}, neither had signal`;
  return late === 1 ? `${phones}, one had no signal` : phones;
}

export function halfOf(act: ClashAct, { now, zone }: When): Half {
  const [happened, written] = [new Date(act.happened_at), new Date(act.written_at)];
  const [word, ...rest] = act.words.split(": ");
  return {
    word: upperFirst(word ?? act.words),
    lines: [
      rest.join(": "), act.detail, `${date(happened, now, zone)}, ${clock(happened, zone)}`, `${act.member.first_name}, ${act.device}`,
      `heard ${dayAndClock(written, now, zone)}`,
    ],
  };
}

/** `Jun’s stands`; where one person said both, the first and the second. */
export function choiceWords({ acts, kind }: ClashAnswer, choice: "first" | "second" | "both"): string {
  if (choice === "both") return kind === "number_taken" ? "Keep both" : "Both happened";
  const [one, other] = acts;
  const act = choice === "first" ? one : other;
  if (!act) return choice === "first" ? "The first stands" : "The second stands";
  if (one?.member.id === other?.member.id) return `${upperFirst(act.words.split(": ")[0] ?? choice)} stands`;
  return `${act.member.first_name}’s stands`;
}

/** `T18 counts as bisqued, on Rack C1, and cannot go on a load.` Of a load only what it counts as. */
export function meanwhile({ kind, subject, stands_meanwhile: { words, place } }: ClashAnswer): string {
  if (kind === "two_load_stories") return `${subject.mark} counts as ${words}, and its ware stays where it is.`;
  if (kind === "two_kilns") return `${subject.mark} stands on both loads.`;
  return `${subject.mark} counts as ${words}${place ? `, on ${place.name},` : ""} and cannot go on a load.`;
}

/** Who is asked, when this person may not say. */
export function askedWords(names: readonly string[]): string {
  if (names.length < 2) return names[0] ?? "an owner";
  return `${names.slice(0, -1).join(", ")} or ${names.at(-1) ?? ""}`;
}

/** Moulds in words: parts, wear, who has it next, the line of castings. */
import type { BlockRow, BookingRow, CastingRow, MouldPartRow, MouldSetAnswer } from "../../api/shapes-moulds";
import { clock, date, day } from "../../domain/clock";
import { count, joinFacts } from "../../domain/format";
import { noonOf } from "../../domain/wall";

const PART_STATES: Record<MouldPartRow["state"], string> = { whole: "whole", chipped: "chipped", out_of_use: "out of use", missing: "missing" };

export function partNote({ state, state_reason }: MouldPartRow): string | undefined {
  if (state === "whole") return undefined;
  return state_reason ? `${PART_STATES[state]}: ${state_reason}` : PART_STATES[state];
}

/** `2 of 2 parts`, or what one of them wants. */
export function partsWords(parts: readonly MouldPartRow[]): string {
  const there = parts.filter((part) => part.state !== "missing").length;
  const all = `${String(there)} of ${count(parts.length, "part", "parts")}`;
  const worst = parts.find((part) => part.state === "missing") ?? parts.find((part) => part.state === "out_of_use") ?? parts.find((part) => part.state === "chipped");
  return worst ? `${all}; ${worst.name} ${partNote(worst) ?? ""}` : `${all}, whole`;
}

export function blockOptions(blocks: readonly BlockRow[], now: Date, zone: string): { value: string; words: string; note?: string }[] {
  return [...blocks]
    .sort((one, other) => (one.laid_on ?? "").localeCompare(other.laid_on ?? ""))
    .slice(-6)
    .map(({ id, label, laid_on }) => ({ value: id, words: label, ...(laid_on ? { note: date(noonOf(laid_on, zone) ?? now, now, zone) } : {}) }));
}

/** `Jun has it from 14:00`, `You have it until 17:00` */
export function nextHolder({ member, from_at, until_at }: BookingRow, meId: string, now: Date, zone: string): string {
  const [from, until] = [new Date(from_at), new Date(until_at)];
  const who = member.id === meId ? "You have it" : `${member.first_name} has it`;
  const when = (at: Date): string => (day(at, now, zone) === "today" ? clock(at, zone) : `${date(at, now, zone)}, ${clock(at, zone)}`);
  return from <= now ? `${who} until ${when(until)}` : `${who} from ${when(from)}`;
}

/** `22 presses` with what the limits of the set say of them. */
export function wearWords({ presses, inspect_at_presses, retire_at_presses }: MouldSetAnswer): { value: string; note: string } {
  const at = (limit: number | null, words: string): string | null => (limit === null ? null : presses >= limit ? `${words} since ${String(limit)}` : `${words} at ${String(limit)}`);
  return { value: count(presses, "press", "presses"), note: joinFacts(at(inspect_at_presses, "look at the detail"), at(retire_at_presses, "pour anew")) };
}

/** `MS-1, generation 2, poured Mon 28 Sep` */
export function castingWords({ master, generation, poured_at, is_in_use }: CastingRow, now: Date, zone: string): { value: string; note: string } {
  const poured = poured_at ? `poured ${date(new Date(poured_at), now, zone)}` : "no date of pouring";
  return { value: `Generation ${String(generation)}`, note: joinFacts(`from ${master.label}`, poured, is_in_use ? "in use" : "laid aside") };
}

/** What is said of an order: how its lines stand, and the likely days against the promise. Never a bare percentage. */
import type { OrderLine, OrderRow, Outlook, OutlookAnswer, Use } from "../../api/shapes-orders";
import { date, dateRange, daysBetween, wallTime } from "../../domain/clock";
import { chance, count, joinFacts, upperFirst } from "../../domain/format";
import { noonOf } from "../../domain/wall";

export interface Around {
  now: Date;
  zone: string;
}

/** `Fri 20 Nov`, or that no day was promised. */
export function promisedWords(day: string | null, { now, zone }: Around): string {
  const at = noonOf(day, zone);
  return at ? date(at, now, zone) : "no day promised";
}

/** `20 Nov` for a row, where each letter counts; the year where the day is not within the year ahead. */
export function dueWords(day: string | null, { now, zone }: Around): string {
  const at = noonOf(day, zone);
  if (!at) return "no day";
  const { day: number, monthName, year } = wallTime(at, zone);
  const days = daysBetween(now, at, zone);
  return days > -180 && days < 330 ? `${String(number)} ${monthName}` : `${String(number)} ${monthName} ${String(year)}`;
}

/** `in 20 days`, `tomorrow`, `3 days ago`. */
export function awayWords(day: string | null, { now, zone }: Around): string | null {
  const at = noonOf(day, zone);
  if (!at) return null;
  const days = daysBetween(now, at, zone);
  if (days === 0) return "today";
  if (days === 1) return "tomorrow";
  return days > 0 ? `in ${String(days)} days` : `${count(-days, "day", "days")} ago`;
}

/** `Fri 4 to Sat 12 Dec` */
export function likelyWords(from: string | null, until: string | null, zone: string): string | null {
  const [first, last] = [noonOf(from, zone), noonOf(until, zone)];
  if (!first || !last) return null;
  return dateRange(first, last, zone);
}

export type Against = "in_time" | "may_be_late" | "late" | "unknown";

/** The likely days against the promise. ISO days compare as text. */
export function against(promised: string | null, from: string | null, until: string | null): Against {
  if (promised === null || from === null || until === null) return "unknown";
  if (until <= promised) return "in_time";
  return from > promised ? "late" : "may_be_late";
}

const AGAINST: Record<Against, string | null> = {
  in_time: "in time", may_be_late: "may be late", late: "late", unknown: null,
};

/** `likely Fri 4 to Sat 12 Dec · in time`: the range against the promise, in words. */
export function rangeAgainst(promised: string | null, from: string | null, until: string | null, zone: string): string | null {
  const range = likelyWords(from, until, zone);
  return range && joinFacts(`likely ${range}`, AGAINST[against(promised, from, until)]);
}

const SMALL = ["none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

export function numberWord(figure: number): string {
  return SMALL[figure] ?? String(figure);
}

export interface LineOne {
  figure: string;
  /** What stands under the figure: *wanted*, *pairs wanted*. */
  unit: string;
  verdict: string;
  evidence: string;
}

const isAside = (words: string): boolean => /(?: lost| lost in pieces| in doubt)$/.test(words);

/** The server's sentence on the seam: what is wanted to the left; what there is; what was lost, and the chance. */
export function lineOne(line: OrderLine, outlook: Outlook | null, outcomes: number): LineOne {
  const [wanted = "", told = ""] = line.sentence.split(": ");
  const said = told.split(", ");
  const there = said.filter((words) => !isAside(words)).join(", ");
  return {
    figure: String(line.wanted_sets),
    unit: wanted.replace(/^\d+ /, ""),
    verdict: upperFirst(there || told || line.sentence),
    evidence: joinFacts(said.filter(isAside).join(", "), outlook && chanceWords(outlook, outcomes)),
  };
}

/** `likely enough by 18 Dec 2026 (guess)`; odds only after twenty of the studio's own outcomes. */
export function chanceWords(outlook: Outlook, outcomes: number): string | null {
  if (outlook.is_all_there || outlook.chance_words === "") return null;
  if (outlook.chance === null) return `${outlook.chance_words} (guess)`;
  return `${numberWord(outlook.wanted_sets)} good: ${chance(outlook.chance, outcomes)}`;
}

/** Every line has all its sets finished: no day has to be guessed any more. */
export function isAllThere(outlook: OutlookAnswer | null): boolean {
  return outlook !== null && outlook.lines.length > 0 && outlook.lines.every((line) => line.is_all_there);
}

export function outlookOf(answer: OutlookAnswer | null, lineId: string): Outlook | null {
  return answer?.lines.find((line) => line.line_id === lineId) ?? null;
}

/** What one row of the list says under the client's name. */
export function rowEvidence(row: OrderRow): string {
  const { wanted, finished, alive, lost_pieces, in_doubt } = row.counts;
  if (row.state !== "open") return joinFacts(row.state, `${String(finished)} of ${String(wanted)} finished`);
  const way = alive - finished;
  return joinFacts(
    `${String(finished)} of ${String(wanted)} finished`,
    way > 0 && `${String(way)} on the way`,
    in_doubt > 0 ? `${String(in_doubt)}\u00a0in doubt` : lost_pieces > 0 && `${String(lost_pieces)}\u00a0lost`,
  );
}

export const USES: Record<Use, { words: string; note: string }> = {
  food: { words: "Food", note: "what a laboratory wrote is recorded here and not judged" },
  display: { words: "Display only", note: "not for food; only the owner lifts this" },
};

/** Covering in words: how near to cracking, what to do with the cover next, and how parts come to meet. */
import type { DryingAnswer } from "../../api/shapes-pieces";
import { about, clockOrDay, joinFacts, upperFirst } from "../../domain/format";
import type { SaidFact } from "./drying-words";

type Covering = DryingAnswer["covering"];
export type CoverStep = Covering["steps"][number];
type Level = "low" | "watch" | "high";

const LEVELS: Record<Level, string> = { low: "Low", watch: "Watch it", high: "High" };

/** Whether the hand may as well do it now. */
export function isDue({ at }: CoverStep, now: Date): boolean {
  return new Date(at).getTime() <= now.getTime() + 30 * 60_000;
}

/** `cover the handle loosely now`, or `cover loosely about 14:00`. */
export function stepWords(step: CoverStep, now: Date, zone: string): string {
  return isDue(step, now) ? `${step.words} now` : `${step.words} ${about(new Date(step.at), now, zone)}`;
}

/** The facts of covering a piece; nothing where it may dry as it stands. */
export function coveringFacts(covering: Covering, now: Date, zone: string): SaidFact[] {
  const { cracking, steps, meeting, thin } = covering;
  const facts: SaidFact[] = [];
  if (cracking && (cracking.peak !== "low" || cracking.now !== "low")) {
    const calm = cracking.now === cracking.peak ? null : `${LEVELS[cracking.now].toLowerCase()} now`;
    facts.push({ label: "may crack", value: LEVELS[cracking.peak], note: joinFacts(calm, cracking.reason) });
  }
  const [first, ...later] = steps;
  if (first) {
    const then = later.slice(0, 2).map((step) => `${step.words} ${clockOrDay(new Date(step.at), now, zone)}`).join(", then ");
    facts.push({ label: "cover", value: upperFirst(stepWords(first, now, zone)), note: then === "" ? "" : `then ${then}` });
  }
  if (thin && new Date(thin.closes) > now) {
    facts.push({ label: "thin part", value: `Too stiff to join ${about(new Date(thin.closes), now, zone)}`, note: `${String(thin.thinnest_mm)}\u202fmm; the times above are of the thickest section` });
  }
  if (meeting) facts.push({ label: "join", value: meetingTime(meeting, now, zone), note: meeting.words });
  return facts;
}

function meetingTime({ opens, closes }: NonNullable<Covering["meeting"]>, now: Date, zone: string): string {
  if (opens === null) return "Feel them first";
  const from = new Date(opens) <= now ? "From now" : upperFirst(`from ${about(new Date(opens), now, zone)}`);
  return closes === null ? from : `${from} until ${about(new Date(closes), now, zone)}`;
}

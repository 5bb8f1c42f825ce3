/** What the papers of an order are said to be, and what stands in their way. Pure; nothing here judges. */
import type { GlazeBatch, JudgedReport, PapersFacts, PieceFood } from "../../api/shapes-orders";
import { joinFacts, THIN } from "../../domain/format";
import type { NatchKind } from "../../ui/natch";

export const UNITS = { mg_per_l: `mg/l`, mg_per_dm2: `mg/dm²` } as const;

export const STATES: Record<PapersFacts["state"], { words: string; note: string }> = {
  display: { words: "For display only", note: "nothing of it is declared for food" },
  declared: { words: "Declared for food", note: "by the papers signed last" },
  not_declared: { words: "Not declared for food", note: "until the owner signs that it is" },
};

export const PEOPLE = [
  { value: "initials", words: "Initials" },
  { value: "first_name", words: "First names" },
  { value: "nobody", words: "Not at all" },
] as const;
export type People = (typeof PEOPLE)[number]["value"];

export const CONTACTS = [
  { value: "table", words: "To eat or drink from" },
  { value: "cooking", words: "To cook in" },
  { value: "storage", words: "To store in" },
  { value: "lid", words: "A lid", note: "goes by the vessel it closes" },
] as const;
export type Contact = (typeof CONTACTS)[number]["value"];

/** A piece that nothing is wanting for is a hollow; one that waits for a report, a load or a word wants a hand. */
export function natchOf({ coverage: { code } }: PieceFood): NatchKind {
  if (code === "within" || code === "display") return "done";
  return code === "over" ? "past" : "hand";
}

export function evidenceOf({ design, limits, glaze_batches: batches, fired }: PieceFood): string {
  return joinFacts(
    design, limits === null ? "its depth is not recorded" : limits.words,
    joinFacts(batches.map(({ label }) => label).join(", "), fired && `${fired.load}, cone ${fired.cone}`),
  );
}

/** Designs for food of which nobody said how deep they are, each once. */
export function shallowUnknown(pieces: readonly PieceFood[]): { id: string; name: string }[] {
  const wanting = pieces.filter(({ limits, coverage: { code } }) => limits === null && code !== "display" && code !== "no_vessel");
  return [...new Map(wanting.map(({ design_id: id, design: name }) => [id, { id, name }])).values()];
}

const figure = (value: number, isBelow: boolean, unit: string): string => `${isBelow ? "under " : ""}${String(value)}${THIN}${unit}`;

export function resultsWords(report: JudgedReport): string {
  const unit = UNITS[report.unit];
  return `Lead ${figure(report.lead_value, report.lead_is_below, unit)}, cadmium ${figure(report.cadmium_value, report.cadmium_is_below, unit)}`;
}

export function batchWords({ name, cone, density_g_per_l: density }: GlazeBatch): string {
  return joinFacts(name, cone !== "" && `cone ${cone}`, density !== null && `${String(density)}${THIN}g/l`);
}

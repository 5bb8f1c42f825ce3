/** What a load costs each maker, in words. Money is in whole smallest coins. Pure. */
import type { FeeShare, FeesAnswer } from "../../api/shapes-firings";
import { count, joinFacts } from "../../domain/format";
import { litresWords } from "./queue-words";

/** `£12.40`; a currency whose sign is not ours to guess stands by its letters: `SEK 12.40`. */
export function moneyWords(minor: number, currency: string): string {
  const form = new Intl.NumberFormat("en-GB", { style: "currency", currency });
  const places = form.resolvedOptions().maximumFractionDigits ?? 2;
  return form.format(minor / 10 ** places).replaceAll("\u00a0", "\u202f");
}

/** What somebody types as money, in the smallest coin; null when it is none. */
export function minorOf(typed: string, currency: string): number | null {
  const words = typed.trim().replace(",", ".").replace(/^[^\d.]+/, "");
  if (!/^\d+(?:\.\d+)?$/.test(words)) return null;
  const places = new Intl.NumberFormat("en-GB", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;
  return Math.round(Number(words) * 10 ** places);
}

export function shareWords({ litres, minor, lines }: FeeShare, currency: string): { verdict: string; evidence: string } {
  const free = lines.filter(({ is_charged }) => !is_charged).length;
  return {
    verdict: minor === null ? litresWords(litres) : moneyWords(minor, currency),
    evidence: joinFacts(minor !== null && litresWords(litres), count(lines.reduce((sum, line) => sum + line.count, 0), "piece", "pieces"), free > 0 && `${String(free)} not charged, as not fired`),
  };
}

const STAGES: Record<FeesAnswer["stage"], string> = { estimate: "As it is loaded now", due: "Due", nothing: "Nothing to pay" };
const MEASURED: Record<FeesAnswer["measured"], string> = { wet: "measured as pressed", dry: "measured dry", bisque: "measured as bisqued", fired: "measured as fired" };

export function feesVerdict({ stage, total_minor, per_litre_minor, measured, cost_minor, currency }: FeesAnswer): { verdict: string; evidence: string } {
  const how = cost_minor !== null ? `a cost of ${moneyWords(cost_minor, currency)} shared by volume` : per_litre_minor === null ? "no tariff is set" : `${moneyWords(per_litre_minor, currency)} a litre`;
  return { verdict: total_minor === null || stage === "nothing" ? STAGES[stage] : `${STAGES[stage]}: ${moneyWords(total_minor, currency)}`, evidence: joinFacts(how, MEASURED[measured]) };
}

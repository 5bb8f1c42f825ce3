/** Ware that waits, in words. */
import type { QueueGroup, QueueRow } from "../../api/shapes-firings";
import { date } from "../../domain/clock";
import { count, joinFacts, THIN, upperFirst } from "../../domain/format";

export function litresWords(litres: number): string {
  return `${litres < 10 ? litres.toFixed(1).replace(/\.0$/, "") : String(Math.round(litres))}${THIN}l`;
}

/** `waits 9 d`, or since today. */
export function waitsWords(days: number): string {
  return days <= 0 ? "since today" : `waits ${String(days)}${THIN}d`;
}

export function groupTitle({ kind, cone }: Pick<QueueGroup, "kind" | "cone">): string {
  return `${upperFirst(kind)}, ${cone ? `cone ${cone}` : "cone not said"}`;
}

export function groupEvidence({ oldest_days, litres, rows }: QueueGroup): string {
  const first = rows.slice(0, 3).map(({ piece }) => piece.mark).join(", ");
  const more = rows.length > 3 ? ` and ${String(rows.length - 3)} more` : "";
  return joinFacts(oldest_days > 0 ? `oldest waits ${String(oldest_days)}${THIN}d` : "ready today", litresWords(litres), `${first}${more}`);
}

export function dueWords(due: string | null, now: Date, zone: string): string | null {
  return due === null ? null : `due ${date(new Date(`${due}T12:00:00Z`), now, zone)}`;
}

/** The first sentence of what is to be minded, without the mark that stands beside it anyway. */
export function shortly(detail: string, mark: string): string {
  const words = detail.startsWith(`${mark}: `) ? detail.slice(mark.length + 2) : detail;
  return (words.split(/[.;] /)[0] ?? words).replace(/\.$/, "");
}

export interface RowWords {
  verdict: string;
  evidence: string;
  spoken: string;
}

/** `Jun, waits 9 d`, then due day, place and what to mind. */
export function queueRowWords(row: QueueRow, now: Date, zone: string): RowWords {
  const verdict = upperFirst([row.maker?.first_name, waitsWords(row.waits_days)].filter(Boolean).join(", "));
  const mind = row.warnings[0]?.detail;
  const evidence = joinFacts(row.is_put_first && row.reason.replace(/\.$/, ""), dueWords(row.due_date, now, zone), row.ticket && (row.ticket.why || row.ticket.words) && `ticket: ${joinFacts(row.ticket.why, row.ticket.words)}`, row.place?.name, row.dry_evidence.ok ? mind && shortly(mind, row.piece.mark) : shortly(row.dry_evidence.detail, row.piece.mark));
  return { verdict, evidence, spoken: `${row.piece.mark}, ${row.piece.noun}: ${verdict}. ${evidence.replaceAll(" · ", ", ")}. ${row.reason}` };
}

/** Litres as typed, by point or comma; null for nothing, NaN for what is no room. */
export function roomOf(typed: string): number | null {
  if (typed.trim() === "") return null;
  const room_l = /^\s*\d+([.,]\d+)?\s*$/.test(typed) ? Number(typed.replace(",", ".")) : NaN;
  return room_l >= 0.1 && room_l <= 10_000 ? room_l : NaN;
}

/** `Gets the layer`, or why another goes before it; null where no room was asked about. */
export function layerWords(group: QueueGroup, pieceId: string): string | null {
  if (group.layer === null) return null;
  if (group.layer.taken.includes(pieceId)) return "gets the layer";
  return group.layer.put_off.find(({ piece_id }) => piece_id === pieceId)?.reason.replace(/\.$/, "") ?? null;
}

export function waitingCount(groups: readonly QueueGroup[]): string {
  return count(groups.reduce((sum, { rows }) => sum + rows.length, 0), "piece", "pieces");
}

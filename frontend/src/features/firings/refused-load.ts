/** Ware that a load did not take: what to say of it, and the way on. Pure; the screen of what was not taken draws it. */
import type { LoadNamed, NotPlaced } from "../../api/shapes-firings";
import type { Problem } from "../../api/problem";
import { isRecord } from "../../api/problem";
import type { KeptAct } from "../../offline/kept-act";

export interface RefusedLoad {
  /** `Not on F-211` */
  verdict: string;
  settledAt: string | null;
  settledBy: string | null;
  refused: NotPlaced[];
  cautions: string[];
  nextLoad: LoadNamed | null;
  /** Whom to ask, where somebody may lift it. */
  asks: string | null;
  /** Pieces of the same act against which nothing was said. */
  others: { id: string; mark: string }[];
}

const text = (value: unknown): string => (typeof value === "string" ? value : "");

function namedLoad(value: unknown): LoadNamed | null {
  return isRecord(value) && typeof value["id"] === "string" ? { id: value["id"], number: text(value["number"]), starts_at: text(value["starts_at"]) } : null;
}

function refusedOf({ facts }: Problem): NotPlaced[] {
  const rows = facts["refused"];
  if (!Array.isArray(rows)) return [];
  return rows.filter(isRecord).map((row) => ({ id: text(row["id"]), mark: text(row["mark"]), code: text(row["code"]), detail: text(row["detail"]) }));
}

/** The pieces an act asked for, with their marks. */
export function wareOf({ about }: KeptAct): { id: string; mark: string }[] {
  const ids = (about["piece_ids"] ?? "").split(" ").filter(Boolean);
  const marks = (about["marks"] ?? "").split(", ");
  return ids.map((id, place) => ({ id, mark: marks[place] ?? "" }));
}

/** Whom to ask: who settled it, else whoever may say otherwise; null where nobody can. */
export function whomToAsk({ settledBy, asks }: RefusedLoad): string | null {
  return settledBy?.split(" ")[0] ?? (asks === null ? null : `a ${asks}`);
}

/** The letter that asks: what is wanted, why it was not taken, and where it can be answered. */
export function askingText(act: KeptAct, said: RefusedLoad, address: string): string {
  const marks = wareOf(act).map(({ mark }) => mark).join(", ") || act.about["marks"] || "ware";
  const number = act.about["number"] ?? "the load";
  const why = act.problem?.detail ? ` Natch says: ${act.problem.detail}` : "";
  const instead = said.nextLoad === null ? "" : ` Else I put it on ${said.nextLoad.number}.`;
  return `Can ${marks} still go on ${number}?${why}${instead} ${address}/loads/${act.about["load_id"] ?? ""}`;
}

/** Null for any other act. */
export function refusedLoad(act: KeptAct): RefusedLoad | null {
  const { problem, about } = act;
  if (problem === null || act.verb !== "put_on_load") return null;
  const refused = refusedOf(problem);
  const out = new Set(refused.map(({ id }) => id));
  const { facts } = problem;
  const cautions = Array.isArray(facts["cautions"]) ? facts["cautions"].filter(isRecord).map((caution) => text(caution["detail"])) : [];
  return {
    verdict: `Not on ${about["number"] ?? "the load"}`,
    settledAt: text(facts["settled_at"]) || text(facts["cutoff_at"]) || null,
    settledBy: text(facts["settled_by"]) || null,
    refused, cautions, nextLoad: namedLoad(facts["next_load"]), asks: text(facts["ask"]) || null,
    others: refused.length === 0 ? [] : wareOf(act).filter(({ id }) => !out.has(id)),
  };
}

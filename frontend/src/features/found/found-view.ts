/** Found ware with what was done on this phone since: newly found, claimed, asked about, ended. */
import type { FoundRow, FoundWhole } from "../../api/shapes-orders";
import type { KeptAct } from "../../offline/kept-act";
import { unseenBy } from "../../offline/kept-act";

export interface NewFound {
  id: string;
  what: string;
  place: string;
  isKept: boolean;
}

export interface FoundListView {
  rows: FoundRow[];
  taken: NewFound[];
}

function isEnd(kind: string | undefined): kind is "returned" | "disposed" {
  return kind === "returned" || kind === "disposed";
}

function after<Row extends FoundRow>(row: Row, act: KeptAct): Row {
  if (act.about["found_id"] !== row.id) return row;
  const kind = act.about["kind"];
  if (act.verb === "found_ended" && isEnd(kind)) return { ...row, state: kind };
  // Once heard, the claim is among those the studio counts.
  return act.verb === "claimed" && act.state === "waiting" ? { ...row, claims_count: row.claims_count + 1 } : row;
}

export function foundListView(rows: readonly FoundRow[], seq: number, acts: readonly KeptAct[]): FoundListView {
  const unseen = unseenBy(seq, acts);
  const known = new Set(rows.map((row) => row.id));
  return {
    rows: rows.map((row) => unseen.reduce(after, row)),
    taken: unseen
      .filter((act) => act.verb === "found_ware" && !known.has(act.id))
      .map(({ id, about, state }) => ({ id, what: about["what"] ?? "", place: about["place_name"] ?? "", isKept: state === "waiting" })),
  };
}

export interface FoundView {
  found: FoundWhole;
  /** Said here and not heard yet. */
  kept: { id: string; words: string }[];
  /** Who was asked, by the studio's word and on this phone. */
  asked: ReadonlySet<string>;
  isClaimedHere: boolean;
}

export function foundView(snapshot: FoundWhole, seq: number, acts: readonly KeptAct[]): FoundView {
  const own = unseenBy(seq, acts).filter((act) => act.about["found_id"] === snapshot.id);
  return {
    found: own.reduce(after, snapshot),
    kept: own.filter((act) => act.state === "waiting").map(({ id, about, words }) => ({ id, words: about["said"] ?? words })),
    asked: new Set([...snapshot.asked, ...own.filter((act) => act.verb === "asked_owners").flatMap((act) => (act.about["member_ids"] ?? "").split(" "))]),
    isClaimedHere: own.some((act) => act.verb === "claimed"),
  };
}

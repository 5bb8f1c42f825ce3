import { useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { FoundRow, FoundWhole } from "../../api/shapes-orders";
import type { Snapshot } from "../../api/shapes";
import type { JsonObject } from "../../offline/kept-act";
import { useKeptActs } from "../common/use-outbox";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useScreen, useWholeList } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import { foundListView, foundView } from "./found-view";
import type { FoundListView, FoundView } from "./found-view";

type Seen = Partial<Snapshot>;

export function useFoundList(): Screen<FoundListView> & { again: () => void } {
  const screen = useWholeList<Page<FoundRow> & Seen>("found/");
  const acts = useKeptActs();
  if (screen.state !== "ready") return screen;
  return { ...screen, value: foundListView(screen.value.results, screen.value.journal_seq ?? 0, acts) };
}

export function useFoundScreen(id: string): Screen<FoundWhole & Seen> & { again: () => void } {
  return useScreen<FoundWhole & Seen>(`found/${id}/`);
}

export type FoundSheet = "none" | "claim" | "back" | "let_go";

export interface FoundOne {
  view: FoundView;
  saying: Saying;
  sheet: FoundSheet;
  open: (sheet: FoundSheet) => void;
  ask: (members: readonly { id: string; first_name: string }[]) => void;
  claim: (pieceId: string | null) => void;
  end: (kind: "returned" | "disposed", claimId: string | null) => void;
}

export function useFoundOne(snapshot: FoundWhole & Seen): FoundOne {
  const { id, what } = snapshot;
  const seq = snapshot.journal_seq ?? 0;
  const view = foundView(snapshot, seq, useKeptActs());
  const saying = useSaid(seq);
  const [sheet, open] = useState<FoundSheet>("none");
  const keep = (path: string, fields: JsonObject, verb: string, about: Record<string, string>, said: string): void => {
    open("none");
    void saying.say({ path, fields, verb, about: { found_id: id, said, ...about }, basedOn: seq, words: `${what}: ${said}` }, said);
  };
  return {
    view, saying, sheet, open,
    ask: (members) => {
      const ids = members.map((member) => member.id);
      keep(`found/${id}/askings/`, { member_ids: ids }, "asked_owners", { member_ids: ids.join(" ") }, `Asked ${members.map((member) => member.first_name).join(" and ")}`);
    },
    claim: (pieceId) => { keep("claims/", { found_id: id, ...(pieceId ? { piece_id: pieceId } : {}) }, "claimed", {}, "Yours, you said"); },
    end: (kind, claimId) => { keep(`found/${id}/endings/`, { kind, ...(claimId ? { claim_id: claimId } : {}) }, "found_ended", { kind }, kind === "returned" ? "Given back" : "Let go"); },
  };
}

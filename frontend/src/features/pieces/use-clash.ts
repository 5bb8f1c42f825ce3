import type { Page } from "../../api/pages";
import type { ClashAnswer, ClashRow } from "../../api/shapes-pieces";
import { unseenBy } from "../../offline/kept-act";
import { useKeptActs } from "../common/use-outbox";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useScreen } from "../common/use-screen";
import type { Screen as Heard } from "../common/use-screen";
import { choiceWords } from "./clash-words";

/** Where two stories are told: those of pieces and those of loads are kept apart by the studio, and asked alike. */
export type ToldOf = "clashes" | "load-clashes";

export interface OpenClash extends ClashRow {
  of: ToldOf;
}

/** Every clash that waits for somebody, the newest first; the list is short. */
export function useOpenClashes(): { heardAt: Date | null; isHeard: boolean; rows: readonly OpenClash[] } {
  const pieces = useScreen<Page<ClashRow>>("clashes/?state=open");
  const loads = useScreen<Page<ClashRow>>("load-clashes/?state=open");
  const rows = [...rowsOf(pieces, "clashes"), ...rowsOf(loads, "load-clashes")].sort((one, other) => Date.parse(other.opened_at) - Date.parse(one.opened_at));
  return { heardAt: pieces.state === "ready" ? pieces.heardAt : null, isHeard: pieces.state === "ready", rows };
}

function rowsOf(screen: Heard<Page<ClashRow>>, of: ToldOf): OpenClash[] {
  return screen.state === "ready" ? screen.value.results.map((row) => ({ ...row, of })) : [];
}

/** `/clashes/…`, `/load-clashes/…` */
export function clashLink({ of, id }: Pick<OpenClash, "of" | "id">): string {
  return `/${of}/${id}`;
}

export interface ClashState {
  saying: Saying;
  /** What was answered on this phone and is not heard back yet. */
  answered: string | null;
  answer: (choice: "first" | "second" | "both") => void;
}

export function useClash(clash: ClashAnswer, of: ToldOf): ClashState {
  const saying = useSaid(clash.journal_seq);
  const kept = unseenBy(clash.journal_seq, useKeptActs()).find((act) => act.about["clash_id"] === clash.id);
  return {
    saying,
    answered: kept?.about["said"] ?? null,
    answer: (choice) => {
      const said = choiceWords(clash, choice);
      void saying.say({
        path: `${of}/${clash.id}/answers/`, fields: { choice }, basedOn: clash.journal_seq, verb: "settled",
        about: { clash_id: clash.id, said }, words: `${clash.subject.mark}: ${said}`,
      }, said);
    },
  };
}

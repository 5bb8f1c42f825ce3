import type { Page } from "../../api/pages";
import type { ClashAnswer, ClashRow } from "../../api/shapes-pieces";
import { unseenBy } from "../../offline/kept-act";
import { useKeptActs } from "../common/use-outbox";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useScreen } from "../common/use-screen";
import { choiceWords } from "./clash-words";

/** Every clash that waits for somebody; the list is short. */
export function useOpenClashes(): readonly ClashRow[] {
  const screen = useScreen<Page<ClashRow>>("clashes/?state=open");
  return screen.state === "ready" ? screen.value.results : [];
}

export interface ClashState {
  saying: Saying;
  /** What was answered on this phone and is not heard back yet. */
  answered: string | null;
  answer: (choice: "first" | "second" | "both") => void;
}

export function useClash(clash: ClashAnswer): ClashState {
  const saying = useSaid(clash.journal_seq);
  const kept = unseenBy(clash.journal_seq, useKeptActs()).find((act) => act.about["clash_id"] === clash.id);
  return {
    saying,
    answered: kept?.about["said"] ?? null,
    answer: (choice) => {
      const said = choiceWords(clash, choice);
      void saying.say({
        path: `clashes/${clash.id}/answers/`, fields: { choice }, basedOn: clash.journal_seq, verb: "settled",
        about: { clash_id: clash.id, said }, words: `${clash.subject.mark}: ${said}`,
      }, said);
    },
  };
}

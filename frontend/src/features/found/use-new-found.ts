import { useLocation } from "preact-iso";
import { useState } from "preact/hooks";
import { uuid7 } from "../../offline/ids";
import { useSession } from "../common/session";
import { useDraft } from "../common/use-draft";
import { useAct } from "../common/use-outbox";
import { useRefused } from "../common/use-refused";
import { emptyFound, foundAgain, foundFields } from "./found-typed";
import type { FoundTyped } from "./found-typed";

const FORM = "found-ware";

export interface NewFoundForm {
  draft: FoundTyped;
  change: (part: Partial<FoundTyped>) => void;
  wrongAt: (pointer: string) => string | null;
  wrong: string | null;
  keep: () => void;
}

export function useNewFound(): NewFoundForm {
  const { units } = useSession().membership.member;
  const { route } = useLocation();
  const act = useAct();
  const refused = useRefused("found_ware", FORM);
  const again = refused.act;
  const { draft, change, clear } = useDraft(again ? `${FORM}:${again.id}` : FORM, () => (again ? foundAgain(again, units) : emptyFound()));
  const [isTried, tryIt] = useState(false);
  const isNameless = draft.what.trim() === "";
  const keep = (): void => {
    tryIt(true);
    if (isNameless) return;
    const id = uuid7();
    refused.letGo();
    const about = { form: FORM, what: draft.what.trim(), place_name: draft.placeName };
    void act({ id, path: "found/", fields: foundFields(draft, units), photos: draft.photos, basedOn: 0, verb: "found_ware", about, words: `Found: ${draft.what.trim()}`, creates: [id] }).then(() => {
      clear();
      route("/found");
    });
  };
  return {
    draft, change, keep, wrong: refused.wrong,
    wrongAt: (pointer) => refused.wrongAt(pointer) ?? (pointer === "#/what" && isTried && isNameless ? "What does it look like?" : null),
  };
}

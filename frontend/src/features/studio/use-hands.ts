/** For owners: what was refused, and acts that came after their member had left or their phone was signed off. */
import type { Page } from "../../api/pages";
import type { HeldRow, RefusedRow } from "../../api/shapes-studio";
import { studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import type { Claim } from "../common/use-claim";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";

export function useRefusedTries(): Screen<Page<RefusedRow>> & { again: () => void } {
  return useScreen<Page<RefusedRow>>("refused/", { every_s: 600 });
}

export interface HeldActs {
  screen: Screen<Page<HeldRow>> & { again: () => void };
  claim: Claim;
  answer: (id: string, isTaken: boolean) => Promise<void>;
}

export function useHeldActs(): HeldActs {
  const { slug } = useSession().membership.studio;
  const screen = useScreen<Page<HeldRow>>("held-acts/", { every_s: 600 });
  const claim = useClaim();
  return {
    screen,
    claim,
    answer: async (id, isTaken) => {
      await claim.claim({ method: "POST", path: studioPath(slug, `held-acts/${id}/answers/`), body: { ...envelope(), is_taken: isTaken } });
      screen.again();
    },
  };
}

/** `stage events` of `/api/v1/studios/barn/pieces/…/stage-events/`: the last word of an address that is no id. */
export function subjectOf(path: string): string {
  const words = path.split("/").filter((part) => part !== "" && !/^[0-9a-f-]{36}$/.test(part));
  return (words.at(-1) ?? "").replaceAll("-", " ");
}

/** For owners: the backups there are, what came of the last trial, and asking for one now. */
import type { BackupRow, BackupsRead, BackupTry } from "../../api/shapes-studio";
import { dayAndClock } from "../../domain/clock";
import { joinFacts, THIN } from "../../domain/format";
import { studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import type { Claim } from "../common/use-claim";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";

export type What = "backup" | "drill";

export interface BackupsScreenState {
  screen: Screen<BackupsRead> & { again: () => void };
  claim: Claim;
  ask: (what: What) => Promise<void>;
}

export function useBackups(): BackupsScreenState {
  const { slug } = useSession().membership.studio;
  const screen = useScreen<BackupsRead>("backups/", { every_s: 15 });
  const claim = useClaim();
  return {
    screen,
    claim,
    ask: async (what) => {
      await claim.claim({ method: "POST", path: studioPath(slug, "backups/"), body: { ...envelope(), what } });
      screen.again();
    },
  };
}

/** `12.3 MB`; what is less than a tenth of one is `0.1 MB`. */
export function size(bytes: number): string {
  return `${Math.max(0.1, bytes / 1e6).toFixed(1)}${THIN}MB`;
}

/** What came of the last trial, in one sentence. */
export function trialWords(last: BackupTry | null, now: Date, zone: string): string {
  if (!last) return "No backup was restored for trial yet.";
  const when = dayAndClock(new Date(last.at), now, zone);
  return last.is_good ? `A backup was restored for trial and was whole: ${when}.` : `A backup was restored for trial and was not whole: ${when}.`;
}

export function rowWords(row: BackupRow, now: Date, zone: string): string {
  const tried = row.tried_at !== null && `${row.is_good ? "came back whole" : "did not come back whole"} ${dayAndClock(new Date(row.tried_at), now, zone)}`;
  return joinFacts(size(row.size_bytes), tried);
}

import { useState } from "preact/hooks";
import type { DryingAnswer, PieceAnswer } from "../../api/shapes-pieces";
import { hasGrant, useSession } from "../common/session";
import { useRefused } from "../common/use-refused";
import type { Refused } from "../common/use-refused";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useKeptActs } from "../common/use-outbox";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import { mayDo } from "./piece-acts";
import type { Draft, May } from "./piece-acts";
import { pieceView } from "./piece-overlay";
import type { PieceView } from "./piece-overlay";

/** What stands in the hand or in place of the screen while one more thing is asked. */
export type Sheet = "none" | "weigh" | "cover" | "touch" | "grade" | "glaze" | "more" | "move" | "stand" | "on" | "back" | "photo" | "damage" | "end";

export interface Piece {
  view: PieceView;
  drying: DryingAnswer | null;
  may: May;
  saying: Saying;
  /** A weight the studio did not take; it stands in its field again. */
  refused: Refused;
  sheet: Sheet;
  open: (sheet: Sheet) => void;
  /** When it happened, if that was not now. */
  happenedAt: Date | null;
  backdate: (at: Date | null) => void;
  keep: (draft: Draft) => void;
}

export function usePieceScreen(id: string): Screen<PieceAnswer> & { again: () => void } {
  return useScreen<PieceAnswer>(`pieces/${id}/`);
}

export function useDrying(id: string): DryingAnswer | null {
  const screen = useScreen<DryingAnswer>(`pieces/${id}/drying/`);
  return screen.state === "ready" ? screen.value : null;
}

export function usePiece(snapshot: PieceAnswer): Piece {
  const { member } = useSession().membership;
  const view = pieceView(snapshot, useKeptActs());
  const saying = useSaid(snapshot.journal_seq);
  const { id, mark } = snapshot.piece;
  const refused = useRefused("weighed", id);
  const [sheet, open] = useState<Sheet>("none");
  const [happenedAt, backdate] = useState<Date | null>(null);

  const keep = ({ said, ...draft }: Draft): void => {
    if (draft.verb === "weighed") refused.letGo();
    void saying.say({ ...draft, basedOn: snapshot.journal_seq, words: `${mark}: ${said}`, ...(happenedAt ? { happenedAt } : {}) }, said);
    open("none");
    backdate(null);
  };
  return { view, drying: useDrying(id), may: mayDo(view.answer, member.grants, member.roles), saying, refused, sheet, open, happenedAt, backdate, keep };
}

/** Taking back what stands in the story: one's own acts, or anybody's for who may advance anybody's. */
export function useMayTakeBack(): (memberId: string) => boolean {
  const { membership } = useSession();
  const isAny = hasGrant(membership, "advance_any");
  return (memberId) => isAny || memberId === membership.member.id;
}

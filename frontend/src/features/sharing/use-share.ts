/** What the client of an order is shown and asked: links need an answer now, approvals are kept like any act. */
import { useState } from "preact/hooks";
import type { Approval, ApprovalsAnswer, LinkMade, LinkPreview, LinksAnswer, LinkWanted, OrderAnswer } from "../../api/shapes-orders";
import { studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import type { Claim } from "../common/use-claim";
import { useKeptActs } from "../common/use-outbox";
import { useRefused } from "../common/use-refused";
import type { Refused } from "../common/use-refused";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import { approvalsView } from "./approvals-view";

export type ShareSheet =
  | { kind: "none" | "choose" | "ask" }
  | { kind: "preview"; link: LinkWanted; html: string }
  | { kind: "made"; made: LinkMade }
  | { kind: "said"; approval: Approval };

export interface Asked {
  about: Approval["about"];
  waits: Approval["waits"];
  due_date: string;
  question: string;
}

export interface Share {
  approvals: readonly Approval[];
  links: LinksAnswer | null;
  sheet: ShareSheet;
  open: (sheet: ShareSheet) => void;
  claim: Claim;
  saying: Saying;
  refused: Refused;
  preview: (link: LinkWanted) => Promise<void>;
  make: (link: LinkWanted) => Promise<void>;
  revoke: (id: string) => Promise<void>;
  ask: (asked: Asked, words: string) => void;
  record: (approval: Approval, answer: string, words: string) => void;
  /** Where a photo of the studio is found, small. */
  thumbnail: (id: string) => string;
}

export function useShareScreen(orderId: string): Screen<OrderAnswer> & { again: () => void } {
  return useScreen<OrderAnswer>(`commissions/${orderId}/`);
}

/** What an order's client was asked; nothing while it has not been heard. */
export function useApprovals(orderId: string): readonly Approval[] {
  const screen = useScreen<ApprovalsAnswer>(`commissions/${orderId}/approvals/`);
  const acts = useKeptActs();
  return screen.state === "ready" ? approvalsView(screen.value, acts, orderId) : [];
}

/** Whether this person may show the order to its client. */
export function useMayShare(commission: OrderAnswer["commission"]): boolean {
  return useSession().membership.member.grants.includes("share_own") && commission.may.change;
}

export function useShare({ commission, journal_seq: basedOn }: OrderAnswer): Share {
  const { id, number } = commission;
  const { slug } = useSession().membership.studio;
  const path = (end: string): string => studioPath(slug, end);
  const links = useScreen<LinksAnswer>(`commissions/${id}/links/`);
  const [sheet, open] = useState<ShareSheet>({ kind: "none" });
  const claim = useClaim();
  const saying = useSaid(basedOn);
  const refused = useRefused("asked_approval", id);
  const approvals = useApprovals(id);
  return {
    approvals, links: links.state === "ready" ? links.value : null, sheet, open, claim, saying, refused,
    thumbnail: (photo) => path(`photos/${photo}/thumbnail/`),
    preview: async (link) => {
      const shown = await claim.claim<LinkPreview>({ method: "POST", path: path(`commissions/${id}/links/preview/`), body: { ...link } });
      if (shown) open({ kind: "preview", link, html: shown.html });
    },
    make: async (link) => {
      const made = await claim.claim<LinkMade>({ method: "POST", path: path(`commissions/${id}/links/`), body: { ...envelope(), ...link } });
      if (!made) return;
      open({ kind: "made", made });
      links.again();
    },
    revoke: async (link) => {
      await claim.claim({ method: "POST", path: path(`links/${link}/revocations/`), body: envelope() });
      links.again();
    },
    ask: (asked, said) => {
      refused.letGo();
      const about = { commission_id: id };
      const fields = { about: asked.about, waits: asked.waits, due_date: asked.due_date, question: asked.question.trim() };
      void saying.say({ path: `commissions/${id}/approvals/`, fields, verb: "asked_approval", about, basedOn, words: `${number}: ${said}` }, said, false);
      open({ kind: "none" });
    },
    record: (approval, answer, said) => {
      const about = { commission_id: id, approval_id: approval.id };
      void saying.say({ path: `approvals/${approval.id}/answers/`, fields: { answer }, verb: "answered_approval", about, basedOn, words: `${number}: ${said}` }, said, false);
      open({ kind: "none" });
    },
  };
}

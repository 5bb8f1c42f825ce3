import { useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { InvitationRow, MemberRow } from "../../api/shapes-studio";
import { studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import type { Claim } from "../common/use-claim";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";

export const ROLES = [
  { value: "maker", words: "Maker" }, { value: "helper", words: "Helper" }, { value: "technician", words: "Kiln technician" }, { value: "owner", words: "Owner" },
] as const;

export function rolesWords(roles: readonly string[]): string {
  return roles.map((role) => ROLES.find((one) => one.value === role)?.words.toLowerCase() ?? role).join(", ");
}

export function useMembers(): Screen<Page<MemberRow>> & { again: () => void } {
  return useScreen<Page<MemberRow>>("members/", { every_s: 600 });
}

export interface Invitations {
  open: readonly InvitationRow[];
  claim: Claim;
  /** The new invitation's link, whole; it is shown this once. */
  link: string | null;
  invite: (roles: readonly string[], email: string) => Promise<boolean>;
  withdraw: (id: string) => Promise<void>;
  setRoles: (memberId: string, roles: readonly string[]) => Promise<boolean>;
}

export function useInvitations(): Invitations {
  const { slug } = useSession().membership.studio;
  const screen = useScreen<Page<InvitationRow>>("invitations/", { every_s: 600 });
  const claim = useClaim();
  const [link, setLink] = useState<string | null>(null);
  return {
    open: screen.state === "ready" ? screen.value.results.filter((one) => one.state === "open") : [],
    claim,
    link,
    invite: async (roles, email) => {
      const made = await claim.claim<{ link: string }>({ method: "POST", path: studioPath(slug, "invitations/"), body: { ...envelope(), roles, email } });
      setLink(made ? new URL(made.link, location.origin).href : null);
      screen.again();
      return made !== null;
    },
    withdraw: async (id) => {
      await claim.claim({ method: "DELETE", path: studioPath(slug, `invitations/${id}/`) });
      screen.again();
    },
    setRoles: async (memberId, roles) => {
      const changed = await claim.claim({ method: "PATCH", path: studioPath(slug, `members/${memberId}/`), body: { roles } });
      return changed !== null;
    },
  };
}

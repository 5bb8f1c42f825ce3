/** Who holds this phone, in which studio, and how the app keeps their acts. Screens read it with `useSession`. */
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { API } from "../../api/client";
import type { Me, Membership } from "../../api/shapes";
import type { Phone } from "../../offline/phone";

export interface Place {
  word: string;
  href: string;
}

export interface Session {
  phone: Phone;
  me: Me;
  membership: Membership;
  deviceId: string;
  /** The words of the place bar; the first is where the app opens. */
  places: readonly Place[];
  /** The studio no longer knows this session; what is kept waits until they sign in. */
  isSignedOut: boolean;
  /** Work in another of one's studios. */
  enter: (slug: string) => Promise<void>;
  /** The studio told anew who this is, after a change. */
  renew: (me: Me) => void;
  signOut: () => Promise<void>;
}

export const SessionContext = createContext<Session | null>(null);

export function useSession(): Session {
  const session = useContext(SessionContext);
  if (!session) throw new Error("A screen is drawn only for who is signed in.");
  return session;
}

/** `/api/v1/studios/barn/bench/` for `bench/`. */
export function studioPath(slug: string, path: string): string {
  return `${API}/studios/${encodeURIComponent(slug)}/${path}`;
}

export function useZone(): string {
  return useSession().membership.studio.zone;
}

export function hasGrant(membership: Membership, grant: string): boolean {
  return membership.member.grants.includes(grant);
}

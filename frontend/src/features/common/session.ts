/** Who holds this phone, in which studio, and how the app keeps their acts. Screens read it with `useSession`. */
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { API } from "../../api/client";
import type { Me, Membership, SharedPerson } from "../../api/shapes";
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
  /** On a shared phone: what it is called, and who may pick it up. */
  shared: { name: string; people: readonly SharedPerson[] } | null;
  /** The PIN of somebody on a shared phone; null when they will not say. */
  askPin: (name: string) => Promise<string | null>;
  /** Ask for the PIN where this path takes one of who holds a shared phone; null elsewhere, and where they will not say. */
  pinFor: (path: string) => Promise<string | null>;
  /** This phone becomes everybody's: its owner's session ends here. */
  share: (name: string) => Promise<void>;
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

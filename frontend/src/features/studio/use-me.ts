import { useState } from "preact/hooks";
import { API } from "../../api/client";
import type { Page } from "../../api/pages";
import type { Me } from "../../api/shapes";
import type { DeviceRow, TokenRow } from "../../api/shapes-studio";
import { currentLook, setLook } from "../common/look";
import type { Look } from "../common/look";
import { studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import type { Claim } from "../common/use-claim";
import { useScreen } from "../common/use-screen";

export type MyChange = Partial<{
  units: Partial<{ length: "mm" | "in"; mass: "g" | "lb"; temperature: "c" | "f" }>;
  left_handed: boolean;
  theme: Look["theme"];
  text: Look["text"];
  quiet_from: string | null;
  quiet_until: string | null;
  wants_email: boolean;
  email: string;
  pin: string;
}>;

export interface MyWays {
  look: Look;
  /** At once on this phone; the studio is told when it can be, so that the next phone looks the same. */
  setMyLook: (part: Partial<Look>) => void;
  claim: Claim;
  /** True once it is taken. */
  change: (part: MyChange) => Promise<boolean>;
}

export function useMyWays(): MyWays {
  const { me, membership, renew } = useSession();
  const [look, keep] = useState(currentLook);
  const claim = useClaim();
  const change = async (part: MyChange): Promise<boolean> => {
    const told = await claim.claim<Me>({ method: "PATCH", path: `${API}/me/`, body: { studio: membership.studio.slug, ...part } });
    if (told === null) return false;
    renew(told);
    return true;
  };
  const setMyLook = (part: Partial<Look>): void => {
    const next = { ...look, ...part };
    setLook(next, me.username);
    keep(next);
    const { theme, text, hand } = part;
    const told: MyChange = { ...(theme ? { theme } : {}), ...(text ? { text } : {}), ...(hand ? { left_handed: hand === "left" } : {}) };
    if (Object.keys(told).length > 0) void change(told);
  };
  return { look, setMyLook, claim, change };
}

export interface Devices {
  devices: readonly DeviceRow[];
  claim: Claim;
  signOff: (id: string) => Promise<void>;
  /** Take off the lock of too many wrong PINs. */
  unlock: (id: string) => Promise<void>;
}

export function useDevices(): Devices {
  const { membership } = useSession();
  const screen = useScreen<Page<DeviceRow>>("devices/", { every_s: 600 });
  const claim = useClaim();
  return {
    devices: screen.state === "ready" ? screen.value.results.filter((device) => device.revoked_at === null) : [],
    claim,
    signOff: async (id) => {
      await claim.claim({ method: "DELETE", path: studioPath(membership.studio.slug, `devices/${id}/`) });
      screen.again();
    },
    unlock: async (id) => {
      await claim.claim({ method: "PATCH", path: studioPath(membership.studio.slug, `devices/${id}/`), body: { is_locked: false } });
      screen.again();
    },
  };
}

export interface Tokens {
  tokens: readonly TokenRow[];
  claim: Claim;
  /** Shown this once. */
  key: string | null;
  make: (name: string, grants: readonly string[]) => Promise<boolean>;
  revoke: (id: string) => Promise<void>;
}

export function useTokens(): Tokens {
  const { membership } = useSession();
  const path = studioPath(membership.studio.slug, "tokens/");
  const screen = useScreen<Page<TokenRow>>("tokens/", { every_s: 600 });
  const claim = useClaim();
  const [key, setKey] = useState<string | null>(null);
  return {
    tokens: screen.state === "ready" ? screen.value.results.filter((token) => token.revoked_at === null) : [],
    claim,
    key,
    make: async (name, grants) => {
      const made = await claim.claim<{ key: string }>({ method: "POST", path, body: { ...envelope(), name, grants } });
      setKey(made?.key ?? null);
      screen.again();
      return made !== null;
    },
    revoke: async (id) => {
      await claim.claim({ method: "DELETE", path: `${path}${id}/` });
      screen.again();
    },
  };
}

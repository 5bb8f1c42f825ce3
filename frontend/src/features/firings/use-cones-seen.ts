/** Cones as somebody reads them off, shelf by shelf, and the acts' form of what was read so far. */
import { useState } from "preact/hooks";
import type { ConeRole, FitAnswer, LoadWhole } from "../../api/shapes-firings";
import { coneSet } from "./cone-series";
import type { Hand } from "./cone-series";
import type { ConeTyped } from "./load-acts";

export const ROLES = [{ role: "firing", words: "The firing cone" }, { role: "guide", words: "The guide, one cooler" }, { role: "guard", words: "The guard, one hotter" }] as const;

export interface ConesSeenNow {
  /** The top shelf first; none where nothing is known of the shelves. */
  levels: number[];
  level: string;
  chooseLevel: (level: string) => void;
  handOf: (role: ConeRole) => Hand | null;
  see: (role: ConeRole, hand: Hand) => void;
  readOn: (level: number) => number;
  cones: Record<ConeRole, string>;
  pick: (role: ConeRole, cone: string) => void;
  typed: ConeTyped[];
}

export function useConesSeen(load: LoadWhole, fit: FitAnswer | null): ConesSeenNow {
  const levels = fit?.levels.map(({ level }) => level).sort((one, other) => other - one) ?? [];
  const [level, chooseLevel] = useState(String(levels[0] ?? 0));
  const [seen, see] = useState<Record<string, Hand>>({});
  const [cones, pick] = useState<Record<ConeRole, string>>(() => {
    const { guide, firing, guard } = coneSet(load.cone);
    return { guide: guide ?? "", firing, guard: guard ?? "" };
  });
  return {
    levels, level, chooseLevel, cones,
    handOf: (role) => seen[`${level} ${role}`] ?? null,
    see: (role, hand) => { see({ ...seen, [`${level} ${role}`]: hand }); },
    readOn: (one) => Object.keys(seen).filter((key) => key.startsWith(`${String(one)} `)).length,
    pick: (role, cone) => { pick({ ...cones, [role]: cone }); },
    typed: typedOf(seen, cones),
  };
}

function typedOf(seen: Record<string, Hand>, cones: Record<ConeRole, string>): ConeTyped[] {
  return Object.entries(seen).flatMap(([key, hand]) => {
    const [at, role] = key.split(" ");
    const known = ROLES.find((one) => one.role === role)?.role;
    return known === undefined || cones[known].trim() === "" ? [] : [{ level: Number(at) || null, role: known, cone: cones[known].trim(), hand: Number(hand) }];
  });
}

/** The moments after an answer: ten seconds of Undo, and a tray that takes nothing while the hand lifts. */
import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import { UNDO_MS } from "./bench-overlay";
import type { Recent } from "./bench-overlay";

/** So long after an answer the tray takes nothing: a knuckle that bounces cannot answer twice. */
export const DEAD_MS = 600;

interface Recents {
  recents: readonly Recent[];
  add: (recent: Recent) => void;
  /** The act is on the disk. */
  stored: (actId: string) => void;
  drop: (actId: string) => void;
}

export function useRecents(): Recents {
  const [recents, setRecents] = useState<readonly Recent[]>([]);
  const drop = useCallback((actId: string): void => {
    setRecents((all) => all.filter((recent) => recent.said.actId !== actId));
  }, []);
  const stored = useCallback((actId: string): void => {
    setRecents((all) => all.map((recent) => (recent.said.actId === actId ? { ...recent, said: { ...recent.said, isStored: true } } : recent)));
  }, []);
  const add = useCallback((recent: Recent): void => {
    setRecents((all) => [...all, recent]);
    setTimeout(() => { drop(recent.said.actId); }, UNDO_MS);
  }, [drop]);
  return { recents, add, stored, drop };
}

/** A ref decides, so that two taps before the next drawing are still told apart; the state only draws. */
export function useDeadTime(): { isDead: boolean; isDeadNow: () => boolean; die: () => void } {
  const until = useRef(0);
  const [round, setRound] = useState(0);
  const [isDead, setDead] = useState(false);
  useEffect(() => {
    if (round === 0) return undefined;
    setDead(true);
    const timer = setTimeout(() => { setDead(false); }, DEAD_MS);
    return () => { clearTimeout(timer); };
  }, [round]);
  const die = useCallback((): void => {
    until.current = performance.now() + DEAD_MS;
    setRound((before) => before + 1);
  }, []);
  return { isDead, isDeadNow: () => performance.now() < until.current, die };
}

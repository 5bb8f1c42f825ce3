/** What was just done on this screen, with its Undo for ten seconds, and dead time for a knuckle that bounces. */
import { useEffect, useState } from "preact/hooks";
import { useDeadTime } from "../pieces/use-answered";
import { useAct, useOutboxState, useUndo } from "./use-outbox";
import type { ScreenAct } from "./use-outbox";

export const UNDO_MS = 10_000;

export interface SaidNow {
  id: string;
  /** *Weighed 783 g*: what stands on the line. */
  words: string;
  at: Date;
  isKept: boolean;
  /** False where the studio takes it back another way, or not at all: then no Undo is promised. */
  canUndo: boolean;
}

export interface Saying {
  said: SaidNow | null;
  isDead: boolean;
  /** Do it; a second tap within the dead time does nothing. Resolves with the act's id, or null. */
  say: (act: ScreenAct, words: string, canUndo?: boolean) => Promise<string | null>;
  undo: () => void;
}

export function useSaid(basedOn: number): Saying {
  const act = useAct();
  const undoAct = useUndo();
  const { acts } = useOutboxState();
  const [said, setSaid] = useState<Omit<SaidNow, "isKept"> | null>(null);
  const { isDead, isDeadNow, die } = useDeadTime();

  useEffect(() => {
    if (said === null) return undefined;
    const timer = setTimeout(() => { setSaid(null); }, UNDO_MS);
    return () => { clearTimeout(timer); };
  }, [said]);

  const say: Saying["say"] = async (given, words, canUndo = true) => {
    if (isDeadNow()) return null;
    die();
    // Rejects only where the phone could not keep it, which the line under the title says.
    const id = await act(given).catch(() => null);
    if (id === null) return null;
    setSaid({ id, words, at: new Date(), canUndo });
    return id;
  };
  const undo = (): void => {
    if (!said?.canUndo) return;
    setSaid(null);
    void undoAct(said.id, `Undo: ${said.words}`, basedOn);
  };
  const kept = acts.find((one) => one.id === said?.id);
  // An act the studio did not take is told on its own line; here it would promise what did not happen.
  const isTold = said !== null && kept?.state !== "parked";
  return { said: isTold ? { ...said, isKept: kept?.state === "waiting" } : null, isDead, say, undo };
}

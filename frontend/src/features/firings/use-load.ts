/** One load: what the studio says of it, what was told here, and what can be done. */
import { useState } from "preact/hooks";
import type { CouldGoAnswer, EventKind, FitAnswer, KilnReading, LoadAnswer, Placement } from "../../api/shapes-firings";
import { temperature } from "../../domain/format";
import { useSession } from "../common/session";
import { useAct, useKeptActs } from "../common/use-outbox";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import { conesAct, eventAct, mendedReading, placingAct, removalAct, STEPS } from "./load-acts";
import type { ConeTyped, EventTyped, WareAsked } from "./load-acts";
import { loadView } from "./load-overlay";
import type { LoadView } from "./load-overlay";
import { placementMark } from "./load-words";
import { loadIn, rowsIn } from "./told-in-degrees";

export type Sheet =
  | { name: "none" | "add" | "unload" | "cones" | "by_cone" | "more" | "change" | "ware" }
  | { name: "event"; kind: EventKind }
  | { name: "placement"; id: string };

export const NO_SHEET: Sheet = { name: "none" };

export function useLoadScreen(id: string): Screen<LoadAnswer> & { again: () => void } {
  return useScreen<LoadAnswer>(`loads/${id}/`);
}

export interface Load extends LoadView {
  seq: number;
  saying: Saying;
  sheet: Sheet;
  open: (sheet: Sheet) => void;
  tell: (kind: EventKind, typed: EventTyped) => void;
  seeCones: (cones: readonly ConeTyped[]) => void;
  /** A firing that stopped counts as fired: first what the cones showed, then that it ended so. */
  acceptByCones: (cones: readonly ConeTyped[], reason: string) => void;
  putOn: (ware: readonly WareAsked[], reason: string) => void;
  putThings: (what: string, count: number) => void;
  takeOff: (placement: Placement) => void;
  mend: (reading: KilnReading, celsius: number) => void;
}

export function useLoad(snapshot: LoadAnswer): Load {
  const { member } = useSession().membership;
  const acts = useKeptActs();
  const { id, first_name, initials } = member;
  const view = loadView({ ...snapshot, load: loadIn(snapshot.load, member.units) }, acts, { id, first_name, initials });
  const seq = snapshot.journal_seq;
  const saying = useSaid(seq);
  const act = useAct();
  const [sheet, open] = useState<Sheet>(NO_SHEET);
  const { load } = view;
  const close = (): void => { open(NO_SHEET); };
  return {
    ...view, seq, saying, sheet, open,
    tell: (kind, typed) => { void saying.say(eventAct(load, kind, seq, typed), STEPS[kind].isClaim ? `Asked: ${STEPS[kind].main.toLowerCase()}` : STEPS[kind].main); close(); },
    seeCones: (cones) => { void saying.say(conesAct(load, cones, seq), "Cones kept"); close(); },
    acceptByCones: (cones, reason) => {
      if (saying.isDead) return;
      const seen = cones.length === 0 ? Promise.resolve("") : act(conesAct(load, cones, seq));
      // What the phone could not keep says so under the title; then nothing is said to have fired.
      void seen.then(() => saying.say(eventAct(load, "ended", seq, { outcome: "fired", reason }), reason.trim() === "" ? "Fired, by its cones" : "Fired"), () => undefined);
      close();
    },
    putOn: (ware, reason) => { void saying.say(placingAct(load, ware, seq, reason), `Asked for ${ware.map(({ mark }) => mark).join(", ")}`); close(); },
    putThings: (what, count) => {
      const marks = `${what}, ${String(count)}`;
      const about = { load_id: load.id, number: load.number, marks };
      void saying.say({ path: `loads/${load.id}/placements/`, fields: { things: [{ what, count }] }, basedOn: seq, verb: "put_on_load", about, words: `${load.number}: put ${marks} on it` }, `Asked for ${marks}`);
      close();
    },
    takeOff: (placement) => {
      const mark = placementMark(placement);
      void saying.say(removalAct(load, { id: placement.id, mark, pieceId: placement.piece?.id ?? null }, seq), `${mark} off`);
      close();
    },
    mend: (reading, celsius) => {
      const said = temperature(celsius, member.units);
      void saying.say(mendedReading(load, reading, celsius, said, seq), `Reads ${said}`);
    },
  };
}

/** Whether it fits and where all stands; with more pieces, as if they were on it too. Null until heard. */
export function useFit(loadId: string, withPieces: readonly string[] = []): FitAnswer | null {
  const tried = [...withPieces].sort().join(",");
  const screen = useScreen<FitAnswer>(`loads/${loadId}/fit/${tried ? `?pieces=${tried}` : ""}`, { every_s: 300 });
  return screen.state === "ready" ? screen.value : null;
}

export function useCouldGo(loadId: string): CouldGoAnswer | null {
  const { units } = useSession().membership.member;
  const screen = useScreen<CouldGoAnswer>(`loads/${loadId}/could-go/`, { every_s: 300 });
  return screen.state === "ready" ? { ...screen.value, rows: rowsIn(screen.value.rows, units) } : null;
}

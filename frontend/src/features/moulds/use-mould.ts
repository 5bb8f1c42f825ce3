/** What press and mould screens both read: the set, how damp it is, and the studio's limits. */
import type { MouldReadiness, MouldSetAnswer, StudioLimits } from "../../api/shapes-moulds";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import type { DrynessBarData } from "./dryness";

/** What a studio begins with, until its own limits are heard. */
const FIRST_LIMITS: StudioLimits = { mould_dry_below_fraction: 0.05, mould_usable_below_fraction: 0.15 };

export interface MouldNow {
  set: MouldSetAnswer;
  readiness: MouldReadiness;
  bar: DrynessBarData;
}

/** Both answers, or neither: a mould without its dampness says too little to press by. */
export function useMouldNow(id: string): Screen<MouldNow> & { again: () => void } {
  const set = useScreen<MouldSetAnswer>(`mould-sets/${id}/`);
  const readiness = useScreen<MouldReadiness>(`mould-sets/${id}/readiness/`);
  const settings = useScreen<StudioLimits>("settings/", { every_s: 600 });
  const again = (): void => { set.again(); readiness.again(); };
  if (set.state !== "ready") return set;
  if (readiness.state !== "ready") return readiness;
  const limits = settings.state === "ready" ? settings.value : FIRST_LIMITS;
  const { dryness } = readiness.value;
  const bar = {
    fraction: dryness.free_water_fraction, word: dryness.word,
    dryBelow: limits.mould_dry_below_fraction, usableBelow: limits.mould_usable_below_fraction,
  };
  return { state: "ready", value: { set: set.value, readiness: readiness.value, bar }, heardAt: set.heardAt, isFresh: set.isFresh && readiness.isFresh, again };
}

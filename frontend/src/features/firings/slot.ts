/** A slot as typed, and what of it is not yet right. */
import type { FiringKind, LoadBrief } from "../../api/shapes-firings";
import { wallTime } from "../../domain/clock";
import { instantOf } from "../../domain/wall";
import type { JsonObject } from "../../offline/kept-act";

export interface Slot {
  kilnId: string | null;
  kind: FiringKind;
  cone: string;
  programmeId: string | null;
  startsAt: string;
  cutoffAt: string;
  watcherId: string | null;
}

const two = (figure: number): string => String(figure).padStart(2, "0");

/** An instant as a field for day and time holds it: `2026-11-02T18:00` on the studio's clock. */
export function typedInstant(iso: string, zone: string): string {
  const { year, month, day, hour, minute } = wallTime(new Date(iso), zone);
  return `${String(year)}-${two(month)}-${two(day)}T${two(hour)}:${two(minute)}`;
}

export function slotOf(load: LoadBrief & { programme: { id: string } | null }, zone: string): Slot {
  return {
    kilnId: load.kiln.id, kind: load.kind, cone: load.cone, programmeId: load.programme?.id ?? null, startsAt: typedInstant(load.starts_at, zone),
    cutoffAt: typedInstant(load.cutoff_at, zone), watcherId: load.watcher?.id ?? null,
  };
}

/** What is wrong with it, by field; nothing when it can be asked for. */
export function slotFaults({ kilnId, cone, startsAt, cutoffAt }: Slot, zone: string): Partial<Record<keyof Slot, string>> {
  const [starts, cutoff] = [instantOf(startsAt, zone), cutoffAt === "" ? null : instantOf(cutoffAt, zone)];
  return {
    ...(kilnId === null ? { kilnId: "Say which kiln." } : {}),
    ...(cone.trim() === "" ? { cone: "Say which cone." } : {}),
    ...(starts === null ? { startsAt: "Say when it starts." } : {}),
    ...(cutoffAt !== "" && cutoff === null ? { cutoffAt: "That is no time." } : {}),
    ...(starts !== null && cutoff !== null && cutoff > starts ? { cutoffAt: "It is open to all until it starts, at the latest." } : {}),
  };
}

/** What may change of a load; instants in universal time. */
export function changeFields({ kilnId, cone, programmeId, startsAt, cutoffAt, watcherId }: Slot, zone: string): JsonObject {
  const [starts, cutoff] = [instantOf(startsAt, zone), instantOf(cutoffAt, zone)];
  return {
    kiln_id: kilnId, cone: cone.trim(), programme_id: programmeId, watcher_id: watcherId,
    ...(starts === null ? {} : { starts_at: starts.toISOString() }), ...(cutoff === null ? {} : { cutoff_at: cutoff.toISOString() }),
  };
}

/** A new load has a kind besides, and keeps it. */
export function slotFields(slot: Slot, zone: string): JsonObject {
  return { kind: slot.kind, ...changeFields(slot, zone) };
}

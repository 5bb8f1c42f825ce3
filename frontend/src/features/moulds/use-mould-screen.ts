import { useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { BookingRow, CastingRow, CrumbCheck, InspectionRow, MouldPartRow, MouldWeighing } from "../../api/shapes-moulds";
import { mass } from "../../domain/format";
import { quantity } from "../../domain/typed";
import { instantOf } from "../../domain/wall";
import { unseenBy } from "../../offline/kept-act";
import type { JsonObject, KeptAct } from "../../offline/kept-act";
import { hasGrant, useSession } from "../common/session";
import type { TakenPhoto } from "../common/taken-photo";
import { useKeptActs } from "../common/use-outbox";
import { useRefused } from "../common/use-refused";
import type { Refused } from "../common/use-refused";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useScreen } from "../common/use-screen";
import type { MouldNow } from "./use-mould";

export type MouldSheet = "none" | "weigh" | "book" | "part" | "look" | "pour";

export interface MouldScreenState {
  castings: readonly CastingRow[];
  bookings: readonly BookingRow[];
  weighings: readonly MouldWeighing[];
  looks: readonly InspectionRow[];
  /** What was pressed last; null until it was heard. */
  crumbs: CrumbCheck | null;
  /** A part is hurt, or a new casting waits for its first press: the pieces before are to be looked over. */
  isCrumbly: boolean;
  kept: readonly KeptAct[];
  saying: Saying;
  weighRefused: Refused;
  bookRefused: Refused;
  pourRefused: Refused;
  sheet: MouldSheet;
  open: (sheet: MouldSheet) => void;
  may: { weigh: boolean; book: boolean; edit: boolean; report: boolean };
  weigh: (typed: string, isDry: boolean) => void;
  /** False when the two times are no times. */
  book: (from: string, until: string) => boolean;
  giveUp: (booking: BookingRow) => void;
  tell: (part: MouldPartRow, kind: string, words: string, reason: string) => void;
  /** A new casting of as many parts; `fired` is a length of the fired piece it would be made from. */
  pour: (from: "master" | "fired_piece", fired: string) => void;
  look: (part: MouldPartRow, finding: string, words: string, photos: readonly TakenPhoto[]) => void;
}

const FINAL: ReadonlySet<string> = new Set(["booked", "gave_up_booking", "poured"]);

const listOf = <Row>(screen: { state: string; value?: Page<Row> }): readonly Row[] => (screen.state === "ready" ? screen.value?.results ?? [] : []);

export function useMouldScreen({ set, readiness }: MouldNow): MouldScreenState {
  const { membership } = useSession();
  const { units, id: meId } = membership.member;
  const zone = membership.studio.zone;
  const path = `mould-sets/${set.id}/`;
  const castings = useScreen<Page<CastingRow>>(`${path}castings/`, { every_s: 600 });
  const bookings = useScreen<Page<BookingRow>>(`${path}bookings/`);
  const weighings = useScreen<Page<MouldWeighing>>(`${path}weighings/`);
  const looks = useScreen<Page<InspectionRow>>(`${path}inspections/`, { every_s: 600 });
  const heard = useScreen<CrumbCheck>(`${path}crumb-check/`, { every_s: 600 });
  const crumbs = heard.state === "ready" ? heard.value : null;
  const isCrumbly = set.parts.some((part) => part.state !== "whole") || (crumbs?.generation ?? null) !== (set.casting?.generation ?? null);
  const seq = readiness.journal_seq;
  const saying = useSaid(seq);
  const weighRefused = useRefused("mould_weighed", set.id);
  const bookRefused = useRefused("booked", set.id);
  const pourRefused = useRefused("poured", set.id);
  const [sheet, open] = useState<MouldSheet>("none");
  const kept = unseenBy(seq, useKeptActs()).filter((act) => act.about["set_id"] === set.id);
  const isMine = set.owner === null || set.owner.id === meId || membership.member.roles.includes("owner");

  /** A booking is given up, not undone; giving up is final, and so is a pouring. */
  const keep = (tail: string, verb: string, fields: JsonObject, said: string, isUnderSet = true, photos: readonly TakenPhoto[] = []): void => {
    void saying.say({ path: isUnderSet ? `${path}${tail}` : tail, fields, photos, basedOn: seq, verb, about: { set_id: set.id }, words: `${set.label}: ${said}` }, said, !FINAL.has(verb));
    open("none");
  };
  return {
    castings: listOf(castings), bookings: listOf(bookings), weighings: listOf(weighings), looks: listOf(looks), crumbs, isCrumbly, kept, saying, weighRefused, bookRefused, pourRefused, sheet, open,
    may: {
      weigh: hasGrant(membership, "press_own"), book: hasGrant(membership, "book_moulds"),
      edit: isMine && hasGrant(membership, "edit_own_moulds"), report: hasGrant(membership, "report_damage"),
    },
    weigh: (typed, isDry) => {
      const value = quantity(typed, units.mass, "g");
      weighRefused.letGo();
      keep("weighings/", "mould_weighed", { mass_g: value, is_dry: isDry }, `Weighed ${typeof value === "number" ? mass(value, units) : value}${isDry ? ", dry" : ""}`);
    },
    book: (from, until) => {
      const [fromAt, untilAt] = [instantOf(from, zone), instantOf(until, zone)];
      if (fromAt === null || untilAt === null) return false;
      bookRefused.letGo();
      keep("bookings/", "booked", { from_at: fromAt.toISOString(), until_at: untilAt.toISOString() }, "Booked");
      return true;
    },
    pour: (from, fired) => {
      pourRefused.letGo();
      if (from === "fired_piece") {
        const value = quantity(fired, units.length, "mm");
        keep("castings/", "poured", { made_from: from, fired_mm: value }, `Asked what a mould of a fired piece gives, ${fired.trim()}`);
      } else if (set.casting) keep("castings/", "poured", { made_from: from, master_id: set.casting.master.id, parts: set.parts.map(({ name }) => ({ name })) }, `Poured anew from ${set.casting.master.label}`);
    },
    giveUp: (booking) => { keep(`bookings/${booking.id}/endings/`, "gave_up_booking", {}, "Booking given up"); },
    tell: (part, kind, words, reason) => { keep(`mould-parts/${part.id}/events/`, "mould_part_told", { kind, reason }, `${part.name} ${words}`, false); },
    look: (part, finding, words, photos) => { keep("inspections/", "inspected", { part_id: part.id, finding }, `${part.name} looks ${words}`, true, photos); },
  };
}

import { useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { PlaceRow } from "../../api/shapes-pieces";
import type { ReadingRow } from "../../api/shapes-studio";
import { quantity } from "../../domain/typed";
import { instantOf } from "../../domain/wall";
import { useSession } from "../common/session";
import { useRefused } from "../common/use-refused";
import type { Refused } from "../common/use-refused";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useScreen } from "../common/use-screen";
import { usePlaces } from "../pieces/use-places";

const WITH_AIR: ReadonlySet<string> = new Set(["room", "cupboard", "kiln"]);

/** Rooms first, then cupboards: where a meter hangs. */
export function placesWithAir(places: readonly PlaceRow[]): PlaceRow[] {
  const rank = (place: PlaceRow): number => ["room", "cupboard", "kiln"].indexOf(place.kind);
  return places.filter((place) => WITH_AIR.has(place.kind)).sort((one, other) => rank(one) - rank(other));
}

/** What is typed beside °C or °F, and in per cent: as typed where it is not a plain figure in the server's unit. */
export function readingFields(air: string, humidity: string, temperature: "c" | "f"): Record<string, string | number> {
  return {
    ...(air.trim() ? { air_c: quantity(air, temperature === "c" ? "°C" : "°F", "c") } : {}),
    ...(humidity.trim() ? { humidity_fraction: quantity(humidity, "%", "fraction") } : {}),
  };
}

export interface Air {
  rooms: readonly PlaceRow[];
  room: PlaceRow | null;
  choose: (id: string) => void;
}

export function useAir(): Air {
  const rooms = placesWithAir(usePlaces());
  const [id, choose] = useState<string | null>(null);
  return { rooms, room: rooms.find((one) => one.id === id) ?? rooms[0] ?? null, choose };
}

export interface RoomAir {
  readings: readonly ReadingRow[];
  saying: Saying;
  refused: Refused;
  /** False when the time typed is no time, or has not come yet. */
  keep: (air: string, humidity: string, when: string) => boolean;
  answer: (reading: ReadingRow, answer: string, words: string) => void;
}

export function useRoomAir(room: PlaceRow): RoomAir {
  const { membership } = useSession();
  const { temperature } = membership.member.units;
  const screen = useScreen<Page<ReadingRow>>(`places/${room.id}/readings/`);
  const saying = useSaid(0);
  const refused = useRefused("read_air", room.id);
  return {
    readings: screen.state === "ready" ? screen.value.results.slice(0, 8) : [],
    saying,
    refused,
    keep: (air, humidity, when) => {
      const at = when === "" ? null : instantOf(when, membership.studio.zone);
      if (when !== "" && (at === null || at.getTime() > Date.now())) return false;
      refused.letGo();
      const said = [air.trim() && `${air.trim()} °${temperature.toUpperCase()}`, humidity.trim() && `${humidity.trim()} %`].filter(Boolean).join(", ");
      void saying.say({
        path: `places/${room.id}/readings/`, fields: readingFields(air, humidity, temperature), basedOn: 0, verb: "read_air",
        about: { place_id: room.id }, words: `${room.name}: ${said}`, ...(at ? { happenedAt: at } : {}),
      }, said);
      return true;
    },
    answer: (reading, answer, words) => {
      void saying.say({ path: `readings/${reading.id}/answers/`, fields: { answer }, basedOn: 0, verb: "answered_reading", about: { reading_id: reading.id }, words: `${room.name}: ${words}` }, words, false);
    },
  };
}

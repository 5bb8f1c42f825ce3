import type { PlaceRow } from "../../api/shapes-pieces";
import { useScreen } from "../common/use-screen";

/** Every place of the studio, as heard last; none yet on a phone that never heard them. */
export function usePlaces(): readonly PlaceRow[] {
  const screen = useScreen<{ results: PlaceRow[] }>("places/", { every_s: 600 });
  return screen.state === "ready" ? screen.value.results : [];
}

/** Shelves and racks under the room they stand in, in the studio's own order. */
export function groupedPlaces(places: readonly PlaceRow[]): { room: PlaceRow; inside: PlaceRow[] }[] {
  const rooms = places.filter((place) => place.parent_id === null);
  const rootOf = (place: PlaceRow, left = 8): string => {
    const parent = places.find((one) => one.id === place.parent_id);
    return parent === undefined || left === 0 ? place.id : rootOf(parent, left - 1);
  };
  return rooms.map((room) => ({ room, inside: places.filter((place) => place.id !== room.id && rootOf(place) === room.id) }));
}

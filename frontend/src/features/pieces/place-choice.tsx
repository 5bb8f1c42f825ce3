/** Where to: places by their room, found by a few letters. */
import { useState } from "preact/hooks";
import { Act, Field } from "../../ui/act";
import css from "./place-choice.module.css";
import { groupedPlaces, usePlaces } from "./use-places";

export function PlaceChoice({ hereId, onChoose }: { hereId: string | null; onChoose: (place: { id: string; name: string }) => void }) {
  const places = usePlaces();
  const [wanted, type] = useState("");
  const letters = wanted.trim().toLowerCase();
  const groups = groupedPlaces(places).map(({ room, inside }) => ({
    room,
    places: [room, ...inside].filter((place) => place.name.toLowerCase().includes(letters)),
  }));
  if (places.length === 0) return <p>No places heard of yet. Where it stands can be said once there is signal.</p>;
  return (
    <>
      <Field label="Find a place" type="search" name="place" value={wanted} onType={type} />
      {groups.filter((group) => group.places.length > 0).map((group) => (
        <section key={group.room.id}>
          <h2 class={css.room}>{group.room.name}</h2>
          <div class={css.places}>
            {group.places.map((place) => (
              <Act key={place.id} isDisabled={place.id === hereId} onPress={() => { onChoose(place); }}>{place.id === hereId ? `${place.name}, here` : place.name}</Act>
            ))}
          </div>
        </section>
      ))}
    </>
  );
}

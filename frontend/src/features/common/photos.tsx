/** Photos beside what they show, and the field that takes some. */
import { useState } from "preact/hooks";
import type { KeptAct } from "../../offline/kept-act";
import { SmallAct } from "../../ui/act";
import { TakePhoto, Thumbnail } from "../../ui/photo";
import css from "./photos.module.css";
import { shrinkPhoto } from "./shrink-photo";
import { taken } from "./taken-photo";
import type { TakenPhoto } from "./taken-photo";
import { usePhotoAddress, usePictureAddress } from "./use-photo";

/** `isSmall` in a story, where they only say that there are some. */
export function Photos({ ids, of, isSmall = false }: { ids: readonly string[]; of: string; isSmall?: boolean }) {
  if (ids.length === 0) return null;
  return <div class={css.photos}>{ids.map((id, place) => <One key={id} id={id} isSmall={isSmall} spoken={`Photo ${of}${ids.length > 1 ? `, ${String(place + 1)} of ${String(ids.length)}` : ""}`} />)}</div>;
}

function One({ id, spoken, isSmall }: { id: string; spoken: string; isSmall: boolean }) {
  return <Thumbnail address={usePhotoAddress(id, "thumbnail")} spoken={spoken} href={`/photos/${id}`} isSmall={isSmall} />;
}

const MOST = 12;

/** Takes photos for an act that is told later; nothing leaves the phone before that. */
export function PhotoField({ photos, onChange }: { photos: readonly TakenPhoto[]; onChange: (photos: TakenPhoto[]) => void }) {
  const [isReading, read] = useState(false);
  const take = async (file: File): Promise<void> => {
    const at = new Date();
    read(true);
    const picture = await shrinkPhoto(file);
    read(false);
    onChange([...photos, taken(picture, at)]);
  };
  return (
    <div class={css.field}>
      {photos.length > 0 && (
        <ul class={css.taken}>
          {photos.map((photo, place) => (
            <li key={photo.id}>
              <Taken photo={photo} spoken={`Photo ${String(place + 1)}, just taken`} />
              <SmallAct spoken={`Leave photo ${String(place + 1)} out`} onPress={() => { onChange(photos.filter((other) => other.id !== photo.id)); }}>Leave out</SmallAct>
            </li>
          ))}
        </ul>
      )}
      {photos.length < MOST && <TakePhoto words={isReading ? "One moment" : photos.length === 0 ? "Take a photo" : "Take another"} isDisabled={isReading} onTake={(file) => { void take(file); }} />}
    </div>
  );
}

/** Photos that the studio has not got: seen, and to be saved among the phone's own. */
export function KeptPhotos({ acts }: { acts: readonly KeptAct[] }) {
  return <ul class={css.taken}>{acts.map((act) => act.photo && <Kept key={act.id} act={act} picture={act.photo} />)}</ul>;
}

function Kept({ act: { id, words }, picture }: { act: KeptAct; picture: Blob }) {
  const address = usePictureAddress(picture, id) ?? "";
  return (
    <li>
      <Thumbnail address={address} spoken={words} />
      <span class={css.of}>{words}</span>
      <SmallAct href={address} saveAs={`${id}.jpg`} spoken={`Save ${words}`}>Save</SmallAct>
    </li>
  );
}

function Taken({ photo: { id, picture }, spoken }: { photo: TakenPhoto; spoken: string }) {
  return <Thumbnail address={usePictureAddress(picture, id) ?? ""} spoken={spoken} />;
}

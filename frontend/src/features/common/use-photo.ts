import { useEffect, useMemo, useRef } from "preact/hooks";
import { studioPath, useSession } from "./session";
import { useOutboxState } from "./use-outbox";

/** An address of what lies on this phone, for as long as it is drawn. `name` tells one picture from another. */
export function usePictureAddress(picture: Blob | null, name: string): string | null {
  // The outbox reads its rows anew at every change, so that the same picture is another object each time.
  const held = useRef({ name, picture });
  if (held.current.name !== name || (held.current.picture === null) !== (picture === null)) held.current = { name, picture };
  const same = held.current.picture;
  const address = useMemo(() => (same === null ? null : URL.createObjectURL(same)), [same]);
  useEffect(() => () => { if (address !== null) URL.revokeObjectURL(address); }, [address]);
  return address;
}

/** Where the picture is to be had: from this phone while it is kept here, else from the studio. */
export function usePhotoAddress(id: string, size: "image" | "thumbnail"): string {
  const { slug } = useSession().membership.studio;
  const kept = useOutboxState().acts.find((act) => act.id === id);
  return usePictureAddress(kept?.photo ?? null, id) ?? studioPath(slug, `photos/${id}/${size}/`);
}

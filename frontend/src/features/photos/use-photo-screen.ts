import { useState } from "preact/hooks";
import type { PhotoRow } from "../../api/shapes-studio";
import { usePhotoAddress } from "../common/use-photo";
import { useScreen } from "../common/use-screen";

export interface PhotoScreenState {
  address: string;
  /** Who took it and when, once that is heard. */
  photo: PhotoRow | null;
  isMissing: boolean;
  miss: () => void;
}

/** The picture does not wait for what is told of it: it may lie on this phone and nowhere else yet. */
export function usePhotoScreen(id: string): PhotoScreenState {
  const told = useScreen<PhotoRow>(`photos/${id}/`, { every_s: 600 });
  const address = usePhotoAddress(id, "image");
  const [missed, setMissed] = useState<string | null>(null);
  return { address, photo: told.state === "ready" ? told.value : null, isMissing: missed === address, miss: () => { setMissed(address); } };
}

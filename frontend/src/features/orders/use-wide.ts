import { useEffect, useState } from "preact/hooks";

/** A desk, as the frame's own style sees one. */
const WIDE = "(min-width: 64rem)";

export function useIsWide(): boolean {
  const [isWide, set] = useState(() => matchMedia(WIDE).matches);
  useEffect(() => {
    const media = matchMedia(WIDE);
    const read = (): void => { set(media.matches); };
    media.addEventListener("change", read);
    return () => { media.removeEventListener("change", read); };
  }, []);
  return isWide;
}

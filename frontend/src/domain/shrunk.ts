/** How large a photo is kept: the studio keeps none larger, so nothing larger is sent through a shed's signal. */

/** As `LONGEST_PX` of the server's `studio/domain/photos.py`. */
export const LONGEST_PX = 2048;

export interface Size {
  width: number;
  height: number;
}

/** The same picture with its longest side no longer than `longest`; nothing is enlarged. */
export function shrunk({ width, height }: Size, longest = LONGEST_PX): Size {
  const by = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * by)), height: Math.max(1, Math.round(height * by)) };
}

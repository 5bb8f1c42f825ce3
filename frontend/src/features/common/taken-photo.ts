/** A photo taken on this phone for an act that is not kept yet. */
import { uuid7 } from "../../offline/ids";
import type { NewAct } from "../../offline/outbox";

export interface TakenPhoto {
  id: string;
  picture: Blob;
  /** ISO 8601 */
  takenAt: string;
}

export function taken(picture: Blob, at: Date): TakenPhoto {
  return { id: uuid7(at.getTime()), picture, takenAt: at.toISOString() };
}

/** The act that sends it, before the act whose words it comes with. */
export function photoAct({ id, picture, takenAt }: TakenPhoto, whose: Pick<NewAct, "username" | "memberId" | "slug">, path: string, words: string): NewAct {
  return {
    ...whose, id, path, fields: {}, basedOn: 0, verb: "took_photo", about: {}, words: `${words} (photo)`, photo: picture, happenedAt: new Date(takenAt),
  };
}

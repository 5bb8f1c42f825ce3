/** Acts from a screen: kept on the phone first, sent when they can be. */
import { useCallback, useEffect, useState } from "preact/hooks";
import type { KeptAct } from "../../offline/kept-act";
import type { NewAct, Outbox, OutboxState } from "../../offline/outbox";
import { buzz } from "./look";
import { studioPath, useSession } from "./session";
import { photoAct } from "./taken-photo";
import type { TakenPhoto } from "./taken-photo";

export function useOutboxState(): OutboxState {
  return useStateOf(useSession().phone.outbox);
}

/** For screens of a phone that nobody holds. */
export function useStateOf(outbox: Outbox): OutboxState {
  const [state, setState] = useState(() => outbox.state());
  useEffect(() => outbox.subscribe(() => { setState(outbox.state()); }), [outbox]);
  return state;
}

/** This person's acts in this studio, or all of a shared phone, in the order made: what an overlay lays over a snapshot. */
export function useKeptActs(): readonly KeptAct[] {
  const { acts } = useOutboxState();
  const { me, membership } = useSession();
  return acts.filter((act) => act.slug === membership.studio.slug && act.username === me.username);
}

export type ScreenAct = Omit<NewAct, "slug" | "username" | "memberId" | "pin" | "path" | "basedOn"> & {
  /** Under the studio: `parts/…/events/`. */
  path: string;
  /** `journal_seq` of the snapshot the person was looking at. */
  basedOn: number;
  /** Taken for it on this phone. */
  photos?: readonly TakenPhoto[];
};

/** `act(…)` resolves with the act's id once it is on the disk. */
export function useAct(): (act: ScreenAct) => Promise<string> {
  const { phone, me, membership, shared, pinFor } = useSession();
  const { slug } = membership.studio;
  const memberId = shared ? membership.member.id : undefined;
  return useCallback(
    async ({ photos = [], fields, ...act }) => {
      buzz();
      // Before anybody types a PIN: it is the tap that happened.
      const happenedAt = act.happenedAt ?? new Date();
      const pin = await pinFor(act.path);
      const whose = { slug, username: me.username, ...(memberId ? { memberId } : {}) };
      const known = Array.isArray(fields["photo_ids"]) ? fields["photo_ids"] : [];
      const named = photos.length === 0 ? fields : { ...fields, photo_ids: [...known, ...photos.map((photo) => photo.id)] };
      return phone.outbox.keep(
        { ...act, ...whose, happenedAt, pin, fields: named, path: studioPath(slug, act.path) },
        photos.map((photo) => photoAct(photo, whose, studioPath(slug, "photos/"), act.words)),
      );
    },
    [phone, me.username, memberId, pinFor, slug],
  );
}

/** Undo: a second act, sent like any other. */
export function useUndo(): (id: string, words: string, basedOn: number) => Promise<string> {
  const act = useAct();
  return useCallback(
    (id, words, basedOn) =>
      act({ path: "retractions/", fields: {}, corrects: id, verb: "retracted", about: { corrects: id }, words, basedOn }),
    [act],
  );
}

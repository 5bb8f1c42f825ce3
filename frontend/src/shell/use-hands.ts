/** In whose hand the phone is: its own person's, or one of many on a shared one, or nobody's. */
import { useCallback, useEffect, useState } from "preact/hooks";
import type { ProblemError } from "../api/problem";
import type { SharedPerson } from "../api/shapes";
import { writeHolder } from "../offline/holder";
import type { Holder } from "../offline/holder";
import type { Phone } from "../offline/phone";
import { dropShared } from "../offline/shared";
import type { SharedPhone } from "../offline/shared";
import { useLock } from "./lock";
import { PLACES } from "./routes";
import { pickUp, putDown, refreshShared, resumeShared, shareThisPhone, signedOff } from "./shared";
import { enter, outOf, refresh, resume, signedOffForGood, signIn, signOut } from "./signing";
import type { Out } from "./signing";

export interface Hands {
  isReady: boolean;
  holder: Holder | null;
  shared: SharedPhone | null;
  out: Out | null;
  signIn: (username: string, password: string) => Promise<void>;
  enter: (slug: string) => Promise<void>;
  keep: (holder: Holder) => void;
  /** Out of this hand: signed out, or put down for the next. */
  handOn: () => Promise<void>;
  share: (name: string) => Promise<void>;
  pick: (person: SharedPerson) => Promise<void>;
  askPeople: () => void;
  /** A shared phone that was signed off is used by one person from now on. */
  leaveShared: () => Promise<void>;
  /** Something was asked of the studio, and it said no. */
  onProblem: (error: ProblemError) => void;
}

export function useHands(phone: Phone): Hands {
  const [isReady, setReady] = useState(false);
  const [holder, setHolder] = useState<Holder | null>(null);
  const [shared, setShared] = useState<SharedPhone | null>(null);
  const [out, setOut] = useState<Out | null>(null);

  const goOut = useCallback(async (why: Out): Promise<void> => {
    setOut(why);
    if (why === "signed_out") return;
    await signedOffForGood(phone);
    setHolder(null);
  }, [phone]);

  useEffect(() => {
    void start();
    async function start(): Promise<void> {
      const everybodys = await resumeShared(phone);
      if (everybodys) {
        setShared(everybodys.shared);
        setHolder(everybodys.holder);
        setReady(true);
        if (everybodys.shared.isGone) return;
        const asked = await refreshShared(phone, everybodys.shared);
        setShared(asked);
        if (asked.isGone) setHolder(null);
        return;
      }
      const kept = await resume(phone);
      setHolder(kept);
      setReady(true);
      if (!kept) return;
      const fresh = await refresh(phone, kept);
      if (typeof fresh === "string") await goOut(fresh);
      else setHolder(fresh);
    }
  }, [phone, goOut]);

  const down = useCallback((): void => {
    if (!shared) return;
    setHolder(null);
    void putDown(phone, shared);
  }, [phone, shared]);
  useLock(shared !== null && holder !== null, down);

  const off = useCallback((): void => {
    if (!shared || shared.isGone) return;
    setHolder(null);
    void signedOff(phone, shared).then(setShared);
  }, [phone, shared]);
  // The outbox may hear of it before any screen asks.
  useEffect(() => phone.outbox.subscribe(() => { if (phone.outbox.state().halt === "signed_off") off(); }), [phone, off]);

  return {
    isReady, holder, shared, out,
    signIn: async (username, password) => {
      setHolder(await signIn(phone, username, password));
      setOut(null);
    },
    enter: async (slug) => { if (holder) setHolder(await enter(phone, holder.me, slug)); },
    keep: (known) => {
      setHolder(known);
      void writeHolder(phone.db, known);
    },
    handOn: async () => {
      if (shared) { down(); return; }
      await signOut(phone);
      setHolder(null);
    },
    share: async (name) => {
      if (!holder) return;
      setShared(await shareThisPhone(phone, holder, name));
      setHolder(null);
    },
    pick: async (person) => {
      if (!shared) return;
      const held = await pickUp(phone, shared, person);
      history.replaceState(null, "", PLACES[0]?.href ?? "/more");
      setShared(held.shared);
      setHolder(held.holder);
    },
    askPeople: () => { if (shared && !shared.isGone) void refreshShared(phone, shared).then(setShared); },
    leaveShared: async () => {
      await dropShared(phone.db);
      setShared(null);
    },
    onProblem: (error) => {
      const why = outOf(error);
      if (why === null) return;
      if (!shared) void goOut(why);
      else if (why === "signed_off") off();
      else down();
    },
  };
}

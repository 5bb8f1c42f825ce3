/** A shared phone that nobody touches is put down, so that the next act is not told under the last name. */
import { useEffect } from "preact/hooks";

/** Long enough to glaze a pot between two taps, shorter than a tea break: common sense, no source. [ms] */
export const LOCK_AFTER_MS = 10 * 60_000;
const LOOK_EVERY_MS = 5_000;
const TOUCHED = "natch.touched";
const TOUCHES = ["pointerdown", "keydown"] as const;

/** True when nobody touched it for so long; the page may have been closed meanwhile. */
export function isUntouched(): boolean {
  return Date.now() - Number(localStorage.getItem(TOUCHED) ?? 0) >= LOCK_AFTER_MS;
}

export function forgetTouch(): void {
  localStorage.removeItem(TOUCHED);
}

export function useLock(isHeld: boolean, lock: () => void): void {
  useEffect(() => {
    if (!isHeld) return undefined;
    const note = (): void => { localStorage.setItem(TOUCHED, String(Date.now())); };
    const look = (): void => { if (isUntouched()) lock(); };
    // The phone may have slept, and its timers with it: the touch that wakes it is the next hand's.
    const touch = (): void => { if (isUntouched()) lock(); else note(); };
    note();
    const timer = setInterval(look, LOOK_EVERY_MS);
    for (const name of TOUCHES) addEventListener(name, touch, { capture: true });
    document.addEventListener("visibilitychange", look);
    return () => {
      clearInterval(timer);
      for (const name of TOUCHES) removeEventListener(name, touch, { capture: true });
      document.removeEventListener("visibilitychange", look);
    };
  }, [isHeld, lock]);
}

/** Where *Back* leads: to the screen before, or to the place this screen belongs to when there was none. */
import { useLocation } from "preact-iso";
import { useEffect } from "preact/hooks";

let last: string | null = null;
let before: string | null = null;

/** Remember, screen by screen, whether anything lies behind this one in the app. */
export function usePath(): string {
  const { path } = useLocation();
  useEffect(() => {
    if (path === last) return;
    before = last;
    last = path;
  }, [path]);
  return path;
}

export function useBack(home: string): () => void {
  const { route } = useLocation();
  return () => {
    if (before === null) route(home);
    else history.back();
  };
}

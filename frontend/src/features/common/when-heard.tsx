/** The head that every screen of one answer has: asking, not to be had, or there, with when it was heard where that is not just now. */
import type { ComponentChildren } from "preact";
import { Failed, Waiting } from "./failed";
import type { Screen } from "./use-screen";

export function WhenHeard<Value>({ title, within, screen, children }: {
  title: string;
  within?: string;
  screen: Screen<Value> & { again: () => void };
  children: (value: Value, heardAt: Date | null) => ComponentChildren;
}) {
  const place = within === undefined ? {} : { within };
  switch (screen.state) {
    case "loading":
      return <Waiting title={title} {...place} isSlow={screen.isSlow} />;
    case "failed":
      return <Failed title={title} {...place} failure={screen.failure} again={screen.again} />;
    case "ready":
      return <>{children(screen.value, screen.isFresh ? null : screen.heardAt)}</>;
  }
}

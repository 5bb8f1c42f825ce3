import { useEffect } from "preact/hooks";
import type { Problem } from "../../api/problem";

/** A form longer than the screen shows its first faulty field once the studio has named one. */
export function useFirstFault(errors: Problem["errors"]): void {
  const faults = errors.map(({ pointer }) => pointer).join(" ");
  useEffect(() => {
    if (faults !== "") document.querySelector("[aria-invalid]")?.scrollIntoView({ block: "center" });
  }, [faults]);
}

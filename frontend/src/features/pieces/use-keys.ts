import { useEffect } from "preact/hooks";
import { choosable } from "./bench-choice";
import type { Bench } from "./use-bench";

/** At a desk: arrows choose, letters answer (O out, N not yet). Never while somebody types. */
export function useKeys(bench: Bench): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.target instanceof HTMLInputElement) return;
      const lines = choosable(bench.view);
      const at = lines.findIndex((line) => line.key === bench.chosen?.key);
      const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
      const next = lines[at + step];
      if (step !== 0 && next) {
        bench.choose(next);
        requestAnimationFrame(() => document.querySelector("[data-chosen]")?.scrollIntoView({ block: "nearest" }));
      }
      else if (event.key.toLowerCase() === "o") bench.answer("demoulded");
      else if (event.key.toLowerCase() === "n") bench.answer("not_yet");
      else return;
      event.preventDefault();
    };
    document.addEventListener("keydown", press);
    return () => { document.removeEventListener("keydown", press); };
  }, [bench]);
}

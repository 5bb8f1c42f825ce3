/** Which line is under the hand, and which comes next. */
import type { BenchView, Line } from "./bench-overlay";

export type AskedBlock = "lookNow" | "laterToday" | "later" | "coverNow" | "joinToday";
const ASKED: readonly AskedBlock[] = ["lookNow", "coverNow", "joinToday", "laterToday", "later"];

/** Lines one may choose, in the order drawn; what has been said already waits for nothing. */
export function choosable(view: BenchView): Line[] {
  const lines: Line[] = [...view.lookNow, ...view.coverNow, ...view.laterToday, ...view.joinToday, ...view.pressNext, ...view.later];
  return lines.filter((line) => line.said === null && !(line.kind !== "mould" && line.row.clash_id !== null));
}

/** The line under the hand: the one tapped while it is there, else the first that wants one. */
export function chosenOf(view: BenchView, key: string | null): Line | null {
  const lines = choosable(view);
  const wants = (line: Line): boolean => {
    switch (line.kind) {
      case "piece":
        return view.lookNow.includes(line) || view.coverNow.includes(line);
      case "join":
        return line.row.verdict === "now";
      case "mould":
        return line.row.may_press;
    }
  };
  return lines.find((line) => line.key === key) ?? lines.find(wants) ?? lines[0] ?? null;
}

/** The block of a line that can be answered, and its place there. */
export function placeOf(view: BenchView, key: string): { block: AskedBlock; place: number } | null {
  for (const block of ASKED) {
    const place = view[block].findIndex((line) => line.key === key);
    if (place >= 0) return { block, place };
  }
  return null;
}

/** The next line of the same block, so that the hand goes down the list; null at its end. */
export function nextKey(view: BenchView, key: string): string | null {
  const at = placeOf(view, key);
  if (!at) return null;
  const block: readonly Line[] = view[at.block];
  const isOpen = (line: Line): boolean => line.said === null && line.key !== key;
  return (block.slice(at.place + 1).find(isOpen) ?? block.find(isOpen))?.key ?? null;
}

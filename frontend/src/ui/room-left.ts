/** How much room is left in a field, said before anything that is typed could be refused. */

/** Said from so much of the limit on, or with so few characters left. Common practice, no source. */
const NEAR = 0.9;
const FEW = 20;

/** Characters as the studio counts them: a face drawn by two code units is one. */
function lengthOf(value: string): number {
  return [...value].length;
}

/** `12 characters left`, `3 characters too many: it would not be taken`, or null far from the limit. */
export function roomLeft(value: string, most: number | undefined): string | null {
  if (most === undefined) return null;
  const length = lengthOf(value);
  const left = most - length;
  if (left < 0) return `${characters(-left)} too many: at most ${String(most)} are taken. Nothing is cut off.`;
  return length >= NEAR * most || (left <= FEW && length > most / 2) ? `${characters(left)} left` : null;
}

/** As an act that waits on the phone would be parked for it, and what was typed would have to be typed again. */
export function isTooLong(value: string, most: number): boolean {
  return lengthOf(value.trim()) > most;
}

function characters(figure: number): string {
  return `${String(figure)} ${figure === 1 ? "character" : "characters"}`;
}

/** Cones as seen, in one line: `Top and middle flat, bottom down`. */
import type { ConeRole, ConeSeen } from "../../api/shapes-firings";
import { upperFirst } from "../../domain/format";

const HANDS: Record<number, string> = { 0: "upright", 6: "down", 7: "flat", 12: "upright" };
const NAMES: Record<number, readonly string[]> = { 1: [""], 2: ["lower", "upper"], 3: ["bottom", "middle", "top"] };

/** `upright`, `down`, `flat`; between them `at 4`, as the hand of a clock. */
export function handName(hand: number): string {
  return HANDS[hand] ?? `at ${String(hand)}`;
}

/** The last word on each shelf's cone of one role, the top shelf first. */
function latest(cones: readonly ConeSeen[], role: ConeRole): ConeSeen[] {
  const byLevel = new Map<number | null, ConeSeen>();
  for (const cone of cones) if (cone.role === role && cone.clock_hand !== null) byLevel.set(cone.level, cone);
  return [...byLevel.values()].sort((one, other) => (other.level ?? 0) - (one.level ?? 0));
}

function shelfName(level: number | null, of: number): string {
  if (level === null) return "";
  return NAMES[of]?.[level - 1] ?? `shelf ${String(level)}`;
}

/** Shelves that stand alike are named together. */
export function roleWords(cones: readonly ConeSeen[], role: ConeRole): string | null {
  const seen = latest(cones, role);
  if (seen.length === 0) return null;
  const of = Math.max(...cones.map(({ level }) => level ?? 0), 1);
  const byHand = new Map<string, string[]>();
  for (const { level, clock_hand } of seen) {
    const hand = handName(clock_hand ?? 12);
    byHand.set(hand, [...(byHand.get(hand) ?? []), shelfName(level, of)].filter(Boolean));
  }
  if (byHand.size === 1 && seen.length > 1) return `${[...byHand.keys()][0] ?? ""} on all shelves`;
  return [...byHand].map(([hand, names]) => [names.join(" and "), hand].filter(Boolean).join(" ")).join(", ");
}

/** A hand at 5, as the server counts a cone for down; beyond 7 it is no hand of a cone. */
const isDown = (hand: number): boolean => hand >= 5 && hand <= 7;

type ConeStand = Pick<ConeSeen, "level" | "role" | "cone" | "clock_hand">;

/** What the cones of the load's own number say of the ware, by the last look at each: all down, or not, or nobody read one. */
export function saidByCones(cones: readonly ConeStand[], cone: string): "down" | "not_down" | "unread" {
  const last = new Map<string, number>();
  for (const one of cones) if (one.cone === cone && one.clock_hand !== null) last.set(`${String(one.level)} ${one.role}`, one.clock_hand);
  if (last.size === 0) return "unread";
  return [...last.values()].every(isDown) ? "down" : "not_down";
}

const UPRIGHT: ReadonlySet<number> = new Set([0, 12]);

/** The guard is the next cone up: where it leans, more heat was there than was wanted. Null where none does, or none was set. */
export function ranHot(cones: readonly ConeSeen[]): string | null {
  const guards = latest(cones, "guard");
  const leaning = guards.filter(({ clock_hand }) => clock_hand !== null && !UPRIGHT.has(clock_hand));
  if (leaning.length === 0) return null;
  const of = Math.max(...cones.map(({ level }) => level ?? 0), 1);
  const where = leaning.length === guards.length && guards.length > 1 ? "on all shelves" : leaning.map(({ level }) => shelfName(level, of)).filter(Boolean).join(" and ");
  return `ran hot: guard cone leaning${where === "" ? "" : where.startsWith("on ") ? ` ${where}` : ` on ${where}`}`;
}

/** The firing cone first; the guide and the guard beside it, as far as they were seen. */
export function conesWords(cones: readonly ConeSeen[]): { value: string; note: string } | null {
  const [firing, guide, guard] = (["firing", "guide", "guard"] as const).map((role) => roleWords(cones, role));
  const others = [guard && `guard ${guard}`, guide && `guide ${guide}`].filter((words): words is string => Boolean(words));
  if (firing) return { value: upperFirst(firing), note: others.join(", ") };
  const [first, ...rest] = others;
  return first === undefined ? null : { value: upperFirst(first), note: rest.join(", ") };
}

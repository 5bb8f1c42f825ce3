/** Cones in their order, for the one cooler and the one hotter; and where a clock hand points. */
import { upperFirst } from "../../domain/format";

/** Coolest first. A zero before the figure is another cone: 06 is far cooler than 6. Order as in the makers' charts. */
const SERIES = [
  "022", "021", "020", "019", "018", "017", "016", "015", "014", "013", "012", "011", "010", "09", "08", "07", "06", "05", "04", "03", "02", "01",
  "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14",
] as const;

/** The next cooler (guide) and the next hotter (guard) beside a load's cone; none for a cone that is not in the series. */
export function coneSet(cone: string): { guide: string | null; firing: string; guard: string | null } {
  const place = SERIES.findIndex((one) => one === cone);
  return { guide: place > 0 ? SERIES[place - 1] ?? null : null, firing: cone, guard: place >= 0 ? SERIES[place + 1] ?? null : null };
}

/** What one sees through the spy hole: 12 stands, 6 has its tip level with its base. */
export const HANDS = [
  { value: "12", words: "Upright" },
  { value: "1", words: "1" },
  { value: "2", words: "2" },
  { value: "3", words: "3" },
  { value: "4", words: "4" },
  { value: "5", words: "5" },
  { value: "6", words: "6, down" },
  { value: "7", words: "Flat" },
] as const;

export type Hand = (typeof HANDS)[number]["value"];

/** `Cone 6` */
export function coneWords(cone: string): string {
  return cone === "" ? "no cone said" : upperFirst(`cone ${cone}`);
}

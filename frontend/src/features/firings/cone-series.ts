/** Cones in their order, for the one cooler and the one hotter; and where a clock hand points. */
import { temperature, upperFirst } from "../../domain/format";
import type { Units } from "../../domain/format";
import type { Option } from "../../ui/act";

/** Coolest first. A zero before the figure is another cone: 06 is far cooler than 6. Order as in the makers' charts. */
const SERIES = [
  "022", "021", "020", "019", "018", "017", "016", "015", "014", "013", "012", "011", "010", "09", "08", "07", "06", "05", "04", "03", "02", "01",
  "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14",
] as const;

/** What a self-supporting large cone needs at 60 °C an hour, as the server's chart has it. Above cone 10 no figure was read. [°C] */
const NEEDS_C: Readonly<Record<string, number>> = {
  "022": 586, "021": 600, "020": 626, "019": 678, "018": 715, "017": 738, "016": 772, "015": 791, "014": 807, "013": 837, "012": 861, "011": 875,
  "010": 903, "09": 920, "08": 942, "07": 976, "06": 998, "05": 1031, "04": 1063, "03": 1086, "02": 1102, "01": 1119,
  "1": 1137, "2": 1142, "3": 1152, "4": 1162, "5": 1186, "6": 1222, "7": 1239, "8": 1249, "9": 1260, "10": 1285,
};

/** Cones to pick from in two lists, so that 06 is never taken for 6, with what each needs beside it; one kept under another name comes last. */
export function coneOptions(units: Units, kept: string): { label: string; options: Option<string>[] }[] {
  const option = (cone: string): Option<string> => {
    const needs_c = NEEDS_C[cone];
    return { value: cone, words: needs_c === undefined ? cone : `${cone}, about ${temperature(needs_c, units)}` };
  };
  const isKnown = kept === "" || SERIES.some((one) => one === kept);
  return [
    { label: "With a nought: cooler", options: SERIES.filter((cone) => cone.startsWith("0")).map(option) },
    { label: "Without a nought: hotter", options: SERIES.filter((cone) => !cone.startsWith("0")).map(option) },
    ...(isKnown ? [] : [{ label: "As written", options: [{ value: kept, words: kept }] }]),
  ];
}

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

/** What the studio says of loads, kilns and waiting ware, in the degrees of who reads it; what people wrote stays as written. Pure. */
import type { Caution, LoadWhole } from "../../api/shapes-firings";
import { inDegrees } from "../../domain/degrees";
import type { Units } from "../../domain/format";

export function cautionsIn<Word extends Caution>(words: readonly Word[], units: Units): Word[] {
  return words.map((word) => ({ ...word, detail: inDegrees(word.detail, units) }));
}

export function rowsIn<Row extends { warnings: Caution[] }>(rows: readonly Row[], units: Units): Row[] {
  return rows.map((row) => ({ ...row, warnings: cautionsIn(row.warnings, units) }));
}

export function loadIn(load: LoadWhole, units: Units): LoadWhole {
  const { stopped } = load;
  const say = (sentence: string): string => inDegrees(sentence, units);
  return {
    ...load,
    warnings: cautionsIn(load.warnings, units), cautions: cautionsIn(load.cautions, units), checklist: cautionsIn(load.checklist, units),
    placements: rowsIn(load.placements, units),
    readings: load.readings.map((reading) => ({ ...reading, why: say(reading.why) })),
    stopped: stopped && { ...stopped, caution: say(stopped.caution), choices: stopped.choices.map((choice) => ({ ...choice, words: say(choice.words) })) },
  };
}

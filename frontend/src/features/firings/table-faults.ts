/** What is wrong with a table, line by line, as the studio answered; and the lines themselves. Pure. */
import type { Problem } from "../../api/problem";

export interface LineFault {
  line: number;
  column: string;
  detail: string;
  /** The line as it stands in the file. */
  text: string;
}

const AT = /^#\/line (\d+)\/(.+)$/;

/** In the order of the file. Whatever is wrong with the whole of it is not here. */
export function lineFaults(errors: Problem["errors"], table: string): LineFault[] {
  const lines = table.split(/\r\n|\r|\n/);
  return errors.flatMap(({ pointer, detail }) => {
    const found = AT.exec(decodeURIComponent(pointer));
    if (!found?.[1] || !found[2]) return [];
    const line = Number(found[1]);
    return [{ line, column: found[2], detail, text: lines[line - 1] ?? "" }];
  }).sort((one, other) => one.line - other.line);
}

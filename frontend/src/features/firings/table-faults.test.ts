import { describe, expect, it } from "vitest";
import { lineFaults } from "./table-faults";

const TABLE = "taken_at,reading_c\n2026-10-25 01:30,890\n2026-10-25 12:30,warm\n";
const fault = (pointer: string, detail: string) => ({ pointer, code: "", detail });

describe("lineFaults", () => {
  it("stand in the order of the file, each with its line", () => {
    const errors = [fault("#/line 3/reading_c", "That is not a number."), fault("#/line 2/taken_at", "The clocks went back: that time happened twice.")];

    expect(lineFaults(errors, TABLE)).toEqual([
      { line: 2, column: "taken_at", detail: "The clocks went back: that time happened twice.", text: "2026-10-25 01:30,890" },
      { line: 3, column: "reading_c", detail: "That is not a number.", text: "2026-10-25 12:30,warm" },
    ]);
  });

  it("read lines that end as any machine ends them", () => {
    const [found] = lineFaults([fault("#/line%202/reading_c", "No.")], "taken_at,reading_c\r\nx,y\r\n");

    expect(found?.text).toBe("x,y");
  });

  it("leave out what is wrong with the whole table", () => {
    expect(lineFaults([fault("#/table", "The header lacks taken_at.")], TABLE)).toEqual([]);
  });
});

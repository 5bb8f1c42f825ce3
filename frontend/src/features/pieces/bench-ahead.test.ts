import { describe, expect, it } from "vitest";
import { aheadOf } from "./bench-ahead";
import { benchAnswer, dryingRow, mouldRow, row } from "./bench-sample";

describe("aheadOf", () => {
  it("names one's own ware and the moulds that may be pressed, each once, and the places", () => {
    const bench = benchAnswer({
      look_now: [row("T26"), row("T21", { mine: false })], later_today: [], drying: [dryingRow("J06"), dryingRow("T26")],
      press_next: [mouldRow("M09"), mouldRow("M11", { may_press: false })],
    });

    const paths = aheadOf(bench).map(({ path }) => path);

    expect(paths.slice(0, 4)).toEqual(["pieces/piece-T26/", "pieces/piece-J06/", "mould-sets/set-M09/", "mould-sets/set-M09/readiness/"]);
    expect(paths).toEqual(expect.arrayContaining(["pieces/", "mould-sets/", "kilns/", "commissions/"]));
  });

  it("leaves out what is too many to ask for", () => {
    const many = Array.from({ length: 40 }, (_, place) => row(`T${String(place)}`));

    const pieces = aheadOf(benchAnswer({ look_now: many })).filter(({ path }) => /^pieces\/./.test(path));

    expect(pieces).toHaveLength(24);
  });
});

import { describe, expect, it } from "vitest";
import { emptyLine, emptyOrder, missing, orderFields, orderTyped } from "./new-order-draft";

const filled = {
  ...emptyOrder(), client: " Larkspur Inn ", what: "hearth tiles", use: "display" as const, promised: "2026-11-20",
  lines: [{ id: "l1", what: "tiles", wanted: 24, roles: [{ designId: "d1", role: "tile", count: 1 }] }, emptyLine()],
};

describe("a new order", () => {
  it("sends what was written and leaves empty lines out", () => {
    expect(orderFields(filled)).toEqual({
      client_name: "Larkspur Inn", client_contact: "", what: "hearth tiles", use: "display", promised_date: "2026-11-20",
      lines: [{ id: "l1", what: "tiles", wanted_sets: 24, recipe: [{ role: "tile", design_id: "d1", count: 1 }] }],
    });
  });

  it("names a line after its pieces where no words were given", () => {
    const line = { id: "l1", what: "", wanted: 6, roles: [{ designId: "j", role: "jar", count: 1 }, { designId: "l", role: "lid", count: 1 }] };
    expect(orderFields({ ...filled, lines: [line] })).toMatchObject({ lines: [{ what: "jar and lid" }] });
  });

  it("asks for client, thing and use, and for nothing else", () => {
    expect([...missing(emptyOrder()).keys()]).toEqual(["#/client_name", "#/what", "#/use"]);
    expect(missing(filled).size).toBe(0);
  });

  it("stands in its form again as it was typed when the studio did not take it", () => {
    const { lines, ...rest } = orderTyped(orderFields(filled));
    expect(rest).toEqual({ number: "", client: "Larkspur Inn", contact: "", what: "hearth tiles", use: "display", promised: "2026-11-20" });
    expect(lines).toEqual(filled.lines.slice(0, 1));
  });

  it("has a line to write in even when it was sent with none", () => {
    expect(orderTyped(orderFields({ ...filled, lines: [] })).lines).toHaveLength(1);
  });
});

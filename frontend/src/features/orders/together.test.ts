import { describe, expect, it } from "vitest";
import type { OrderLine, OrderPiece } from "../../api/shapes-orders";
import { orderAnswer, orderPiece } from "./order-sample";
import { aloneIn, groupsOf, partnersFor, setWords } from "./together";

const role = (name: string, count = 1) => ({ role: name, design_id: name, design_name: name, noun: name, count });
const stands = (mark: string, kind: string, other: string, gap: number | null = null): OrderPiece =>
  orderPiece(mark, "drying", { role: kind, partners: [{ id: other.toLowerCase(), mark: other, seat_gap_mm: gap }] });

function jars(pieces: OrderPiece[], recipe = [role("jar"), role("lid")]): OrderLine {
  const [line] = orderAnswer().lines;
  if (!line) throw new Error("The sample has a line.");
  return { ...line, recipe, pieces };
}

describe("what stands together", () => {
  it("is told once for each pair, with the gap of the seat where it was measured", () => {
    const line = jars([stands("J06", "jar", "L06", 0.4), stands("J07", "jar", "L07"), stands("L06", "lid", "J06", 0.4), stands("L07", "lid", "J07")]);
    expect(groupsOf(line).map((group) => [group.pieces.map((piece) => piece.mark).join(" "), group.gap_mm])).toEqual([["J06 L06", 0.4], ["J07 L07", null]]);
  });

  it("is one group where three hang together", () => {
    const pot = orderPiece("P01", "drying", { role: "pot", partners: [{ id: "p02", mark: "P02", seat_gap_mm: null }, { id: "k01", mark: "K01", seat_gap_mm: null }] });
    expect(groupsOf(jars([pot, stands("P02", "pot", "P01"), stands("K01", "stand", "P01")]))).toHaveLength(1);
  });
});

describe("what stands alone", () => {
  it("is what could stand with another: nothing lost, nothing handed over, nothing of another design", () => {
    const line = jars([
      orderPiece("J09", "drying", { role: "jar" }), orderPiece("L09", "scrapped", { role: "lid", stage: "lost" }), orderPiece("X01", "drying", { role: null }),
      orderPiece("J01", "delivered", { role: "jar", stage: "delivered" }),
    ]);
    expect(aloneIn(line).map((piece) => piece.mark)).toEqual(["J09"]);
  });

  it("is nothing where one piece is a set", () => {
    expect(aloneIn(jars([orderPiece("T01", "drying", { role: "tile" })], [role("tile")]))).toHaveLength(0);
  });
});

describe("whom a piece may stand with", () => {
  it("is the other role, and its own only where a set asks for two", () => {
    const jar = orderPiece("J09", "drying", { role: "jar" });
    const pieces = [jar, orderPiece("J10", "drying", { role: "jar" }), orderPiece("L09", "drying", { role: "lid" }), orderPiece("L10", "scrapped", { role: "lid", stage: "lost" })];
    expect(partnersFor(jars(pieces), jar).map((piece) => piece.mark)).toEqual(["L09"]);
    const bracket = orderPiece("B02", "checked", { role: "bracket" });
    expect(partnersFor(jars([bracket, orderPiece("B03", "checked", { role: "bracket" })], [role("bracket", 2)]), bracket).map((piece) => piece.mark)).toEqual(["B03"]);
  });
});

describe("a set", () => {
  it("is said as the studio says it", () => {
    expect(setWords(jars([]))).toBe("jar + lid");
    expect(setWords(jars([], [role("bracket", 2)]))).toBe("2 brackets");
    expect(setWords(jars([], []))).toBe("any piece");
  });
});

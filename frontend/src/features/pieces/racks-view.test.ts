import { describe, expect, it } from "vitest";
import type { PieceBrief } from "../../api/shapes-pieces";
import { THIN } from "../../domain/format";
import { keptSample, pieceSample } from "./piece-sample";
import { countsOf, findPieces, overlaidPieces, pieceLineWords, placeLines, standingAbout, untouched } from "./racks-view";

const NOW = new Date("2026-10-31T09:00:00Z");
const row = (mark: string, change: Partial<PieceBrief> = {}): PieceBrief => ({
  ...pieceSample({ id: mark, mark, stage: "drying", state: "drying", state_words: "drying open", place: { id: "b1", name: "Rack B1" } }).piece, ...change,
});

describe("places", () => {
  const places = ["a2", "b1"].map((id, order) => ({ id, name: id, kind: "rack" as const, parent_id: null, air_from_id: null, air_m_s: null, order }));

  it("stand in the studio's order with their counts, and what has none comes last", () => {
    const pieces = [row("T1", { place: null }), row("J06"), row("L06", { state: "bone_dry", state_words: "bone dry" }), row("T2", { place: { id: "a2", name: "Rack A2" } })];

    expect(placeLines(pieces, places)).toEqual([
      { id: "a2", name: "Rack A2", count: 1, evidence: "1 drying" },
      { id: "b1", name: "Rack B1", count: 2, evidence: "1 drying · 1 bone dry" },
      { id: "none", name: "No place said", count: 1, evidence: "1 drying" },
    ]);
  });

  it("count the most first, however it is covered", () => {
    expect(countsOf([row("1", { state: "bisqued", state_words: "bisqued" }), row("2"), row("3", { state_words: "drying, sealed" })])).toBe("2 drying · 1 bisqued");
  });

  it("hold nothing that is gone or only meant", () => {
    expect(standingAbout([row("1"), row("2", { stage: "delivered" }), row("3", { stage: "lost" }), row("4", { stage: "pressing", state: "to_press" })])).toHaveLength(1);
  });
});

describe("untouched", () => {
  it("lists raw ware of a week and more, the longest first", () => {
    const rows = [
      row("A", { touched_at: "2026-10-24T09:00:00Z" }), row("B", { touched_at: "2026-10-24T09:01:00Z" }), row("C", { touched_at: "2026-10-01T09:00:00Z" }),
      row("D", { touched_at: "2026-10-01T09:00:00Z", stage: "bisque" }),
    ];

    expect(untouched(rows, NOW).map((piece) => piece.mark)).toEqual(["C", "A"]);
  });
});

describe("findPieces", () => {
  it("wants every word, anywhere, and puts the typed mark first", () => {
    const rows = [row("T12"), row("T1", { maker: { id: "m", first_name: "Bram", initials: "BT" } }), row("J06")];

    expect(findPieces(rows, "t1").map((piece) => piece.mark)).toEqual(["T1", "T12"]);
    expect(findPieces(rows, "bram rack").map((piece) => piece.mark)).toEqual(["T1"]);
    expect(findPieces(rows, "bram kiln")).toEqual([]);
  });

  it("finds whatever the accents, the case and characters nobody sees", () => {
    const rows = [row("É01"), row("T\u200b02", { maker: { id: "z", first_name: "Zoë", initials: "ZA" } })];

    expect(findPieces(rows, "e01").map((piece) => piece.mark)).toEqual(["É01"]);
    expect(findPieces(rows, "E\u030101")).toHaveLength(1);
    expect(findPieces(rows, "t02 zoe")).toHaveLength(1);
    expect(findPieces(rows, "za")).toHaveLength(1);
  });
});

describe("overlaidPieces", () => {
  it("moves many by one act, and leaves alone what the list shows already", () => {
    const act = keptSample({ verb: "moved", about: { piece_ids: "J06 L06", place_id: "c1", place_name: "Rack C1" }, state: "heard", seq: 12 });
    const placesOf = (seq: number) => overlaidPieces([row("J06"), row("T1")], seq, [act]).map((piece) => piece.place?.id);

    expect(placesOf(11)).toEqual(["c1", "b1"]);
    expect(placesOf(12)).toEqual(["b1", "b1"]);
  });
});

describe("pieceLineWords", () => {
  it("says first what wants a decision", () => {
    expect(pieceLineWords(row("J06", { is_damaged: true }), NOW).verdict).toBe("Damaged, decide");
    expect(pieceLineWords(row("J06", { clash_id: "c", is_damaged: true }), NOW).verdict).toBe("Two stories");
    expect(pieceLineWords(row("J06"), NOW)).toEqual({
      verdict: "Drying open", evidence: `3${THIN}h · Rack B1 · Jun`, spoken: `J06, sauce boat, drying open. 3${THIN}h, Rack B1, Jun`,
    });
  });
});

import { describe, expect, it } from "vitest";
import type { FindAnswer, Hit } from "../../api/shapes-find";
import { pieceSample } from "../pieces/piece-sample";
import { askedPath, foundKinds } from "./find-view";

const NOW = new Date("2026-10-31T09:00:00Z");
const hit = (kind: Hit["kind"], name: string, words: string, is_exact = false): Hit => ({ kind, id: name, name, words, is_exact });
const answer = (...results: Hit[]): FindAnswer => ({ results, is_cut: false });
const piece = (mark: string) => pieceSample({ id: mark, mark }).piece;

describe("askedPath", () => {
  it("asks with folded letters, and nothing while none were typed", () => {
    expect(askedPath("  Café\u200b C-1 ")).toBe("search/?q=cafe%20c-1");
    expect(askedPath(" \u200b")).toBeNull();
  });
});

describe("foundKinds", () => {
  it("takes pieces from the phone's own copy, with what was done here since", () => {
    const kinds = foundKinds("s0", [piece("S04"), piece("T01")], answer(hit("piece", "S04", "boat · as the studio knows it")), NOW);

    expect(kinds.map(({ name, lines }) => [name, lines.map((line) => line.name)])).toEqual([["Pieces", ["S04"]]]);
    expect(kinds[0]?.lines[0]?.verdict).toBe("In mould");
  });

  it("takes them from the answer where the phone has heard of none", () => {
    expect(foundKinds("s0", null, answer(hit("piece", "S04", "boat · in mould")), NOW)[0]?.lines[0]).toMatchObject({ name: "S04", verdict: "boat", evidence: "in mould", href: "/pieces/S04" });
  });

  it("puts first the kind in which something bears that very name", () => {
    const kinds = foundKinds("c-102", [piece("C-1020")], answer(hit("load", "F-208", "C-102"), hit("order", "C-102", "Dr E. Wainfleet · sauce boats · open", true)), NOW);

    expect(kinds.map((kind) => kind.name)).toEqual(["Orders", "Pieces", "Loads"]);
    expect(kinds[0]).toMatchObject({ name: "Orders", lines: [{ href: "/orders/C-102", spoken: "C-102: Dr E. Wainfleet, sauce boats, open" }] });
  });

  it("says of two makers of one first name which is which", () => {
    const [people] = foundKinds("bram", [], answer(hit("person", "Bram", "BT · Bram Tallis"), { ...hit("person", "Bram", "BQ · Bram Quarry"), id: "other" }), NOW);

    expect(people?.lines.map((line) => line.verdict)).toEqual(["BT", "BQ"]);
  });

  it("does not count what was cut off", () => {
    expect(foundKinds("t", null, { ...answer(hit("place", "Rack T", "rack")), is_cut: true }, NOW).map((kind) => kind.count)).toEqual([null]);
  });
});

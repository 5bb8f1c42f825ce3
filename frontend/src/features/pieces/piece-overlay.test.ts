import { describe, expect, it } from "vitest";
import { pieceView } from "./piece-overlay";
import { keptSample, partSample, pieceSample } from "./piece-sample";

describe("pieceView", () => {
  it("takes a piece out of its moulds only when every part is out", () => {
    const both = pieceSample({}, { parts: [partSample(), partSample({ id: "part2", role: "handle" })] });
    const out = (id: string, order: number) => keptSample({ id: `k${id}`, order, verb: "demoulded", about: { piece_id: "p1", part_id: id } });

    const first = pieceView(both, [out("part1", 1)]).answer;
    const second = pieceView(both, [out("part1", 1), out("part2", 2)]).answer;

    expect(first.parts.map((part) => part.state)).toEqual(["out", "in_mould"]);
    expect(first.piece.state).toBe("in_mould");
    expect([second.piece.stage, second.piece.state, second.piece.since_at]).toEqual(["assembly", "out", "2026-10-31T09:00:00Z"]);
  });

  it("covers and keeps the time a piece has been drying", () => {
    const drying = pieceSample({ stage: "drying", state: "drying", cover: "open" });

    const { piece } = pieceView(drying, [keptSample({ verb: "covered", about: { piece_id: "p1", state: "tucked" } })]).answer;

    expect([piece.cover, piece.state_words, piece.since_at]).toEqual(["tucked", "drying, tucked in", "2026-10-31T06:00:00Z"]);
  });

  it("moves, also with others in one act", () => {
    const moved = keptSample({ verb: "moved", about: { piece_ids: "p0 p1 p2", place_id: "r1", place_name: "Rack B1" } });

    expect(pieceView(pieceSample(), [moved]).answer.piece.place).toEqual({ id: "r1", name: "Rack B1" });
  });

  it("shows what it stands on until it is put elsewhere", () => {
    const about = { piece_id: "p1", place_id: "r1", place_name: "Rack B1" };
    const said = keptSample({ verb: "moved", about: { ...about, stands_on: "slats" } });
    const moved = keptSample({ verb: "moved", about });

    expect(pieceView(pieceSample(), [said]).answer.piece.stands_on).toBe("slats");
    expect(pieceView(pieceSample(), [said, moved]).answer.piece.stands_on).toBe("");
  });

  it("leaves out what the studio's own rows show, and what is about another piece", () => {
    const acts = [
      keptSample({ id: "seen", state: "heard", seq: 9 }),
      keptSample({ id: "other", order: 2, about: { piece_id: "p9" } }),
      keptSample({ id: "new", order: 3, state: "heard", seq: 11 }),
    ];

    expect(pieceView(pieceSample(), acts).kept.map((telling) => [telling.id, telling.isKept])).toEqual([["new", false]]);
  });

  it("shows photos taken here before those the studio told of, each once", () => {
    const acts = [
      keptSample({ id: "a", verb: "photographed", body: { photo_ids: ["mine"], happened_at: "2026-10-31T09:00:00Z" } }),
      keptSample({ id: "b", order: 2, verb: "checked", body: { photo_ids: ["newest", "old"], happened_at: "2026-10-31T09:05:00Z" } }),
    ];

    const view = pieceView(pieceSample({}, { photo_ids: ["old"] }), acts);

    expect(view.answer.photo_ids).toEqual(["newest", "old", "mine"]);
    expect(view.kept.map((telling) => telling.photoIds)).toEqual([["newest", "old"], ["mine"]]);
  });

  it("strikes through what is taken back before the studio has heard of it", () => {
    const undo = keptSample({ verb: "retracted", about: { corrects: "act1" }, body: { corrects: "act1", happened_at: "2026-10-31T09:00:00Z" } });

    expect(pieceView(pieceSample(), [undo]).answer.story[0]?.is_taken_back).toBe(true);
  });
});

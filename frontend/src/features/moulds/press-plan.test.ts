import { describe, expect, it } from "vitest";
import type { PieceBrief } from "../../api/shapes-pieces";
import { keptSample, pieceSample } from "../pieces/piece-sample";
import { askedWords, pressBefore, pressingFields, targetsOf, waitingFor, withoutPressed } from "./press-plan";

const MAKES = { id: "dp2", role: "handle", design_id: "d1", design_name: "ribbed sauce boat" };
const boat = (mark: string, change: Partial<PieceBrief> = {}): PieceBrief => ({ ...pieceSample({ id: mark, mark, missing_roles: ["handle"] }).piece, ...change });

describe("waitingFor", () => {
  it("puts the piece that has its body first, and leaves out what is not mine, complete or of another design", () => {
    const pieces = [
      boat("S10", { state: "to_press" }), boat("S9", { state: "to_press" }), boat("S04"), boat("S05", { mine: false }),
      boat("S06", { missing_roles: [] }), boat("J01", { design_id: "d2" }), boat("S01", { state: "drying" }),
    ];

    expect(waitingFor(pieces, MAKES).map((piece) => piece.mark)).toEqual(["S04", "S9", "S10"]);
  });

  it("does not offer a piece whose press the studio has not heard of yet", () => {
    const act = keptSample({ verb: "pressed", about: { set_id: "set4", piece_ids: "S04", role: "handle" } });

    expect(withoutPressed([boat("S04"), boat("S9")], [act], "handle").map((piece) => piece.mark)).toEqual(["S9"]);
    expect(withoutPressed([boat("S04")], [act], "body")).toHaveLength(1);
    expect(withoutPressed([boat("S04")], [{ ...act, state: "parked" }], "handle")).toHaveLength(1);
  });
});

describe("targetsOf", () => {
  it("goes through the waiting ones from the chosen one, then takes new marks", () => {
    const waiting = [boat("S04"), boat("S09")];

    expect(targetsOf(waiting, "S09", ["S11", "S12"], 2)).toEqual([{ pieceId: "S09", mark: "S09" }, { pieceId: null, mark: "S11" }]);
    expect(targetsOf(waiting, null, ["S11"], 2)).toEqual([{ pieceId: null, mark: "S11" }]);
  });
});

describe("pressingFields", () => {
  it("describes new pieces and only names old ones", () => {
    const press = { castingId: "c1", mouldPartIds: ["mp1", "mp2"], slabBlockId: null, role: "handle", designId: "d1" };

    expect(pressingFields(press, [{ partId: "a", pieceId: "S04", mark: "S04", isNew: false }, { partId: "b", pieceId: "new", mark: "S11", isNew: true }])).toEqual({
      casting_id: "c1", mould_part_ids: ["mp1", "mp2"], count: 2,
      parts: [{ id: "a", role: "handle", piece: { id: "S04" } }, { id: "b", role: "handle", piece: { id: "new", mark: "S11", design_id: "d1" } }],
    });
  });
});

describe("pressBefore", () => {
  const at = Date.parse("2026-10-31T09:00:00Z");
  const act = keptSample({ verb: "pressed", about: { set_id: "set2", marks: "T1, T2" }, body: { count: 12 } });

  it("takes a press of the same mould within ten seconds for a bounce", () => {
    expect(pressBefore([act], null, "set2", at + 9_999)).toMatchObject({ isBounce: true, count: 12 });
    expect(pressBefore([act], null, "set3", at + 1_000)).toBeNull();
  });

  it("asks from ten seconds up to five minutes whether another is meant, and not after that", () => {
    expect(pressBefore([act], null, "set2", at + 10_000)).toMatchObject({ isBounce: false, marks: "T1, T2" });
    expect(pressBefore([act], null, "set2", at + 299_999)).toMatchObject({ isBounce: false });
    expect(pressBefore([act], null, "set2", at + 300_000)).toBeNull();
  });

  it("does not ask after an undo", () => {
    const undo = keptSample({ id: "k2", verb: "retracted", body: { corrects: act.id } });

    expect(pressBefore([act, undo], null, "set2", at + 1_000)).toBeNull();
    expect(pressBefore([undo], { id: act.id, marks: "T1", count: 1, at: new Date(at) }, "set2", at + 1_000)).toBeNull();
  });

  it("remembers what the studio has heard and the outbox has forgotten, but not what was not taken", () => {
    const remembered = { id: act.id, marks: "T1, T2", count: 12, at: new Date(at) };

    expect(pressBefore([], remembered, "set2", at + 20_000)).toMatchObject({ isBounce: false, count: 12 });
    expect(pressBefore([{ ...act, state: "parked" }], remembered, "set2", at + 20_000)).toBeNull();
  });
});

describe("askedWords", () => {
  const before = { marks: "T1", count: 1, at: new Date("2026-10-31T13:10:00Z"), isBounce: true };

  it("says the count that would be pressed again", () => {
    expect(askedWords({ ...before, count: 12, isBounce: false }, "M01", 12, "Europe/London")).toBe("were pressed in M01 at 13:10. Another 12?");
    expect(askedWords(before, "M01", 1, "Europe/London")).toBe("was pressed in M01 just now. Another?");
  });
});

import { describe, expect, it } from "vitest";
import { overlay, pieceLine, withRecents } from "./bench-overlay";
import type { BenchView, Line, Recent } from "./bench-overlay";
import { chosenOf } from "./bench-choice";
import { benchAnswer, dryingRow, joinRow, kept, row } from "./bench-sample";

const keys = (lines: readonly Line[]): string[] => lines.map((line) => line.key);
const T26 = { part_id: "part-T26", piece_id: "piece-T26" };

describe("overlay", () => {
  it("is the snapshot when nothing was done since", () => {
    const view = overlay(benchAnswer(), [kept("demoulded", T26, { state: "heard", seq: 100 })]);

    expect(keys(view.lookNow)).toEqual(["part-T26", "part-J08", "part-L08"]);
    expect(view.lookNow.every((line) => line.said === null)).toBe(true);
  });

  it("moves what came out to drying, kept here", () => {
    const view = overlay(benchAnswer(), [kept("demoulded", T26)]);

    expect(keys(view.lookNow)).toEqual(["part-J08", "part-L08"]);
    expect(view.drying[0]).toMatchObject({ key: "part-T26", said: { verb: "demoulded", isKept: true } });
  });

  it("no longer calls it kept once it is heard, though the snapshot is older", () => {
    const view = overlay(benchAnswer(), [kept("demoulded", T26, { state: "heard", seq: 101 })]);

    expect(view.drying[0]?.said?.isKept).toBe(false);
  });

  it.each(["not_yet", "stuck"])("moves %s out of the way of the hand", (verb) => {
    const view = overlay(benchAnswer(), [kept(verb, { ...T26, how: "undercut" })]);

    expect(keys(view.lookNow)).toEqual(["part-J08", "part-L08"]);
    expect(view.laterToday[0]).toMatchObject({ key: "part-T26", said: { verb, how: "undercut" } });
  });

  describe("a cover that is due", () => {
    const step = { at: benchAnswer().at, cover: "loose" as const, part_ids: ["h"], words: "cover the handle loosely" };
    const answer = benchAnswer({ drying: [dryingRow("J06"), dryingRow("S03", { cover_next: step })], join_today: [joinRow("S04", { verdict: "wait", cover_next: step })] });

    it("stands in a block of its own, out of what merely dries", () => {
      const view = overlay(answer, []);

      expect([keys(view.coverNow), keys(view.drying)]).toEqual([["piece-S03"], ["piece-J06"]]);
      expect(chosenOf({ ...view, lookNow: [] }, null)?.key).toBe("piece-S03");
    });

    it("is done once somebody covered here, also of parts that wait to be joined", () => {
      const view = overlay(answer, [kept("covered", { piece_id: "piece-S03" }), kept("covered", { piece_id: "piece-S04" }, { id: "other" })]);

      expect(view.coverNow).toEqual([]);
      expect(view.drying[0]).toMatchObject({ key: "piece-S03", row: { cover_next: null }, said: { verb: "covered", isKept: true } });
      expect(view.joinToday[0]?.row.cover_next).toBeNull();
    });
  });

  it("puts a row back when its act was undone before it was heard", () => {
    const out = kept("demoulded", T26);
    const view = overlay(benchAnswer(), [out, kept("retracted", {}, { body: { corrects: out.id } })]);

    expect(keys(view.lookNow)).toEqual(["part-T26", "part-J08", "part-L08"]);
  });

  it("leaves the row where it is when its act was not taken", () => {
    const view = overlay(benchAnswer(), [kept("demoulded", T26, { state: "parked" })]);

    expect(keys(view.lookNow)).toContain("part-T26");
  });

  it("says joined, pressed and moved in place", () => {
    const snapshot = benchAnswer({ join_today: [joinRow("S04")] });
    const view = overlay(snapshot, [
      kept("joined", { piece_id: "piece-S04" }),
      kept("pressed", { set_id: "set-M09" }),
      kept("moved", { piece_id: "piece-J06", place_id: "a2", place_name: "Rack A2" }),
    ]);

    expect(view.joinToday[0]?.said?.verb).toBe("joined");
    expect(view.pressNext[0]?.said?.verb).toBe("pressed");
    expect(view.drying[0]?.row.place?.name).toBe("Rack A2");
  });

  it("takes a scrapped piece off the bench, and changes nothing for acts it does not know", () => {
    const view = overlay(benchAnswer(), [kept("scrapped", { piece_id: "piece-J06" }), kept("weighed", { piece_id: "piece-T26" })]);

    expect(view.drying).toEqual([]);
    expect(keys(view.lookNow)).toHaveLength(3);
  });
});

describe("withRecents", () => {
  const recent: Recent = {
    block: "lookNow", place: 0, line: pieceLine(row("T26")),
    said: { actId: "act-demoulded", verb: "demoulded", at: new Date(), how: null, isKept: true, isStored: true },
  };
  const shown = (view: BenchView): string[] => keys([...view.lookNow, ...view.laterToday, ...view.drying]);

  it("keeps an answered line in its place and nowhere else while it can be undone", () => {
    const acts = [kept("demoulded", T26)];
    const view = withRecents(overlay(benchAnswer(), acts), [recent], acts);

    expect(keys(view.lookNow)).toEqual(["part-T26", "part-J08", "part-L08"]);
    expect(shown(view).filter((key) => key === "part-T26")).toHaveLength(1);
    expect(view.lookNow[0]?.said).toMatchObject({ verb: "demoulded", isKept: true });
  });

  it("keeps it even when the studio's new rows have already put the piece to dry", () => {
    const snapshot = benchAnswer({ look_now: [row("J08")], drying: [row("T26", { part: null, mould: null })] });
    const view = withRecents(overlay(snapshot, []), [recent], []);

    expect(keys(view.lookNow)).toEqual(["part-T26", "part-J08"]);
    expect(view.drying).toEqual([]);
    expect(view.lookNow[0]?.said?.isKept).toBe(false);
  });

  it("says kept from the tap on, before the disk has answered", () => {
    const view = withRecents(overlay(benchAnswer(), []), [{ ...recent, said: { ...recent.said, isStored: false } }], []);

    expect(view.lookNow[0]?.said?.isKept).toBe(true);
  });
});

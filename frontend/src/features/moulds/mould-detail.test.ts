import { describe, expect, it } from "vitest";
import type { InspectionRow } from "../../api/shapes-moulds";
import { detailPair } from "./mould-detail";

const look = (id: string, mould_part_id: string, photo_ids: string[] = []): InspectionRow => ({ id, mould_part_id, photo_ids, finding: "crisp", happened_at: "2026-10-31T09:00:00Z" });

describe("detailPair", () => {
  it("sets the first photo of a part beside its latest, past looks without one and other parts", () => {
    const looks = [look("5", "left"), look("4", "left", ["d"]), look("3", "right", ["c"]), look("2", "left", ["b"]), look("1", "left", ["a"])];

    expect(detailPair(looks)).toMatchObject({ partId: "left", first: { id: "1" }, latest: { id: "4" } });
  });

  it("has one photo alone stand by itself, and none where there is none", () => {
    expect(detailPair([look("1", "left", ["a"])])).toMatchObject({ first: { id: "1" }, latest: null });
    expect(detailPair([look("1", "left")])).toBeNull();
  });
});

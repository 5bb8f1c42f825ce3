/** One found thing as the studio answers it, for the tests of this folder. */
import type { FoundRow, FoundWhole } from "../../api/shapes-orders";

const nessa = { id: "nessa", first_name: "Nessa", initials: "NQ" };

export function foundRow(change: Partial<FoundRow> = {}): FoundRow {
  return {
    id: "f1", what: "square tile", mark_seen: "", place: { id: "d3", name: "Rack D3" }, x_mm: 150, y_mm: 150, height_mm: 12, body: null,
    looks: "bone_dry", looks_words: "bone dry", found_at: "2026-10-30T09:00:00Z", found_by: nessa, notice_date: "2026-11-29", is_notice_past: false,
    state: "open", piece: null, claims_count: 0, photo_ids: [], ended_at: null, returned_to: null, ...change,
  };
}

export function foundWhole(change: Partial<FoundWhole> = {}): FoundWhole {
  return {
    ...foundRow(), candidates: [{ member: { id: "bram", first_name: "Bram", initials: "BT" }, piece: { id: "t23", mark: "T23", noun: "tile", state_words: "drying, tucked in" }, why: ["was last on Rack D3", "the same size"] }],
    asked: [], claims: [], may: { dispose: false, give_back: false }, notice_words: "kept until 29 Nov 2026", ...change,
  };
}

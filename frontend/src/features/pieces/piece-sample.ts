/** A piece made up for tests. */
import type { PartWhole, PieceAnswer, Telling } from "../../api/shapes-pieces";
import type { KeptAct } from "../../offline/kept-act";

const JUN = { id: "m1", first_name: "Jun", initials: "JH" };

export function partSample(change: Partial<PartWhole> = {}): PartWhole {
  return {
    id: "part1", role: "body", state: "in_mould", pressed_at: "2026-10-30T16:00:00Z", out_at: null, joined_at: null, ended_at: null,
    mould: { set_id: "set3", label: "M03", generation: 1 }, slab_block: { id: "b1", label: "BK-15" }, replaces: null, number: 1, look_again_at: null, cover: "", ...change,
  };
}

export function tellingSample(change: Partial<Telling> = {}): Telling {
  return {
    id: "act1", verb: "weighed", words: "weighed 783 g", happened_at: "2026-10-31T08:00:00Z", written_at: "2026-10-31T08:00:20Z", is_late: false,
    member: JUN, device: "Jun’s phone", note: null, photo_ids: [], corrects: null, is_taken_back: false, taken_back_by: null, left_out_by: null, is_also_said: false, is_held: false, taken_back_at: null, ...change,
  };
}

export function pieceSample(piece: Partial<PieceAnswer["piece"]> = {}, change: Partial<PieceAnswer> = {}): PieceAnswer {
  return {
    at: "2026-10-31T09:00:00Z", journal_seq: 10,
    piece: {
      id: "p1", mark: "S04", noun: "sauce boat", design_name: "ribbed sauce boat", design_id: "d1", stage: "pressing", state: "in_mould",
      state_words: "in mould", since_at: "2026-10-31T06:00:00Z", touched_at: "2026-10-31T06:00:00Z", place: { id: "b2", name: "Bench 2" }, maker: JUN,
      mine: true, cover: "", clash_id: null, is_damaged: false, missing_roles: [], use: "food", grade: "", body: null, has_interrupted_bisque: false,
      look_again_at: null, cover_since_at: null, stands_on: "", begun_at: "2026-10-31T06:00:00Z", ...piece,
    },
    parts: [partSample()], nexts: [], backs: [], waits_for: null, warnings: [], cautions: [], reclaim: "plain", photo_ids: [], story: [tellingSample()], history_count: 1, visits: [], firings: { bisque: 0, glaze: 0 }, order: null, partners: [], ...change,
  };
}

export function keptSample(change: Partial<KeptAct>): KeptAct {
  return {
    order: 1, id: "k1", username: "jun", slug: "barn", path: "", body: { happened_at: "2026-10-31T09:00:00Z" }, verb: "weighed",
    about: { piece_id: "p1" }, words: "S04: Weighed 783 g", creates: [], photo: null, made_at: "2026-10-31T09:00:00Z", state: "waiting", tries: 0,
    waitUntil: 0, isWaitAsked: false, seq: null, problem: null, ...change,
  };
}

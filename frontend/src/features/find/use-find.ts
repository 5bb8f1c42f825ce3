import type { FindAnswer } from "../../api/shapes-find";
import type { PieceList } from "../../api/shapes-pieces";
import { useNow } from "../common/use-now";
import { useKeptActs } from "../common/use-outbox";
import { useScreen, useWholeList } from "../common/use-screen";
import { overlaidPieces } from "../pieces/racks-view";
import { askedPath, foundKinds } from "./find-view";
import type { FoundKind } from "./find-view";

export interface Found {
  kinds: FoundKind[];
  /** `asking` while the studio has not answered; `unheard` where it cannot be asked. */
  studio: "asking" | "unheard" | "heard";
}

/** `path` is what the letters ask of the studio. */
export function useFound(letters: string, path: string): Found {
  const now = useNow();
  const acts = useKeptActs();
  const list = useWholeList<PieceList>("pieces/");
  const answer = useScreen<FindAnswer>(path, { every_s: 600 });
  const pieces = list.state === "ready" ? overlaidPieces(list.value.results, list.value.journal_seq, acts) : null;
  // What was answered to other letters says nothing of these.
  const isOfThese = askedPath(letters) === path;
  const heard = isOfThese && answer.state === "ready" ? answer.value : null;
  const studio = heard !== null ? "heard" : isOfThese && answer.state === "failed" ? "unheard" : "asking";
  return { kinds: foundKinds(letters, pieces, heard, now), studio };
}

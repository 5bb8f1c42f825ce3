import { clock } from "../../domain/clock";
import { SmallAct } from "../../ui/act";
import { Row } from "../../ui/seam";
import { useZone } from "./session";
import type { Saying } from "./use-said";

/** The line of what was just done, with its Undo. */
export function SaidLine({ mark, saying: { said, undo } }: { mark: string; saying: Saying }) {
  const zone = useZone();
  if (said === null) return null;
  const verdict = `${said.words} ${clock(said.at, zone)}`;
  return (
    <ul role="status">
      <Row
        mark={mark} natch={said.isKept ? "kept" : "today"} verdict={verdict} spoken={verdict}
        evidence={said.isKept ? "kept here" : undefined}
        act={said.canUndo && <SmallAct spoken={`Undo: ${verdict}`} onPress={undo}>Undo</SmallAct>}
      />
    </ul>
  );
}

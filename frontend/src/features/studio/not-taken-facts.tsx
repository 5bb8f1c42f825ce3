/** What the studio knows of the thing an act that it did not take was about. */
import type { KeptAct } from "../../offline/kept-act";
import type { PieceAnswer } from "../../api/shapes-pieces";
import { day } from "../../domain/clock";
import { Fact } from "../../ui/seam";
import { useScreen } from "../common/use-screen";

export function PieceNow({ pieceId, now, zone }: { pieceId: string; now: Date; zone: string }) {
  const screen = useScreen<PieceAnswer>(`pieces/${pieceId}/`);
  if (screen.state !== "ready") return null;
  const { mark, place, state_words, since_at } = screen.value.piece;
  return (
    <>
      <Fact label="now" value={`${mark} ${place ? `stays on ${place.name}` : "has no place said"}`} note={`${state_words} since ${day(new Date(since_at), now, zone)}`} />
      {screen.value.waits_for && <Fact label="next" natch="next" value={screen.value.waits_for} />}
    </>
  );
}

/** The mark of the thing, cut from what was asked: `L06: moved to Rack B1`. */
export function markOf(act: KeptAct): { mark: string; asked: string } {
  const [mark, ...rest] = act.words.split(": ");
  if (!mark || rest.length === 0 || mark.length > 12) return { mark: "", asked: act.words };
  return { mark, asked: rest.join(": ") };
}

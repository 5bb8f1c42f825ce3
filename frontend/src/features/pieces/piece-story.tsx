/** The story, newest first; a late entry shows both times, and what was taken back stays to be read. */
import { useState } from "preact/hooks";
import type { PieceAnswer } from "../../api/shapes-pieces";
import { clock } from "../../domain/clock";
import { Act, SmallAct } from "../../ui/act";
import { Block, Fact } from "../../ui/seam";
import { useZone } from "../common/session";
import { useUndo } from "../common/use-outbox";
import type { KeptTelling } from "./piece-overlay";
import css from "./piece.module.css";
import { storyLine } from "./piece-words";
import { useMayTakeBack } from "./use-piece";

const FIRST = 8;

export function PieceStory({ answer, kept, now }: { answer: PieceAnswer; kept: readonly KeptTelling[]; now: Date }) {
  const zone = useZone();
  const undo = useUndo();
  const mayTakeBack = useMayTakeBack();
  const [isWhole, setWhole] = useState(false);
  const [isCorrecting, correct] = useState(false);
  const { story, piece } = answer;
  const shown = isWhole ? story : story.slice(0, FIRST);
  let lastDay = "";
  return (
    <Block name="Story" count={story.length + kept.length}>
      {kept.map((telling) => (
        <li key={telling.id}><Fact label={clock(telling.at, zone)} natch={telling.isKept ? "kept" : "today"} value={telling.words} note={telling.isKept ? "kept here" : "heard"} /></li>
      ))}
      {shown.map((telling) => {
        const line = storyLine(telling, { now, zone });
        const label = line.day === lastDay ? line.clock : `${line.day}, ${line.clock}`;
        lastDay = line.day;
        const isMine = !line.isTakenBack && telling.corrects === null && mayTakeBack(line.memberId);
        return (
          <li key={line.id}>
            <Fact label={label} natch={telling === story[0] && kept.length === 0 ? "done" : "none"} note={line.written ?? undefined}>
              <span class={line.isTakenBack ? css.gone : undefined}><b>{line.words}</b></span>
              <br />
              {line.who}{line.isTakenBack && `, ${line.takenBackBy}`}
              {line.note && <p>{line.note}</p>}
              {isMine && isCorrecting && (
                <SmallAct
                  spoken={`Take back: ${line.words}, ${label}`}
                  onPress={() => { correct(false); void undo(line.id, `${piece.mark}: taken back: ${line.words}`, answer.journal_seq); }}
                >
                  Take it back
                </SmallAct>
              )}
            </Fact>
          </li>
        );
      })}
      {story.length > 0 && !isCorrecting && <li class={css.again}><Act onPress={() => { correct(true); }}>Something here is wrong…</Act></li>}
      {story.length > shown.length && <li class={css.again}><Act onPress={() => { setWhole(true); }}>All {story.length}</Act></li>}
    </Block>
  );
}

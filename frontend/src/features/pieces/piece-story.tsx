/** The story, newest first; a late entry shows both times, and what was taken back stays to be read. */
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { PieceAnswer, Telling } from "../../api/shapes-pieces";
import { clock } from "../../domain/clock";
import { joinFacts } from "../../domain/format";
import { Act, SmallAct } from "../../ui/act";
import { Block, Fact } from "../../ui/seam";
import { Photos } from "../common/photos";
import { useZone } from "../common/session";
import { useUndo } from "../common/use-outbox";
import { useWholeList } from "../common/use-screen";
import type { KeptTelling } from "./piece-overlay";
import css from "./piece.module.css";
import { storyLine } from "./piece-words";
import { useMayTakeBack } from "./use-piece";

const FIRST = 8;

export function PieceStory({ answer, kept, now }: { answer: PieceAnswer; kept: readonly KeptTelling[]; now: Date }) {
  const [isWhole, setWhole] = useState(false);
  const { piece, story, history_count } = answer;
  const props = { answer, kept, now };
  if (isWhole) return <WholeStory {...props} />;
  const more = history_count > Math.min(FIRST, story.length) && <Act onPress={() => { setWhole(true); }}>{`All ${String(history_count)} of ${piece.mark}`}</Act>;
  return <Told {...props} story={story.slice(0, FIRST)} more={more} />;
}

interface StoryProps {
  answer: PieceAnswer;
  kept: readonly KeptTelling[];
  now: Date;
}

/** What the studio last told of it at the least, and all of it once that is heard. */
function WholeStory({ answer, kept, now }: StoryProps) {
  const screen = useWholeList<Page<Telling>>(`pieces/${answer.piece.id}/history/`);
  const isHeard = screen.state === "ready";
  return <Told answer={answer} kept={kept} now={now} story={isHeard ? screen.value.results : answer.story} more={isHeard ? null : <p>still asking for the rest</p>} />;
}

function Told({ answer, kept, now, story, more }: StoryProps & { story: readonly Telling[]; more: ComponentChildren }) {
  const zone = useZone();
  const undo = useUndo();
  const mayTakeBack = useMayTakeBack();
  const [isCorrecting, correct] = useState(false);
  const { piece } = answer;
  let lastDay = "";
  return (
    <Block name="Story" count={answer.history_count + kept.length}>
      {kept.map((telling) => (
        <li key={telling.id}><Fact label={clock(telling.at, zone)} natch={telling.isKept ? "kept" : "today"} value={telling.words} note={telling.isKept ? "kept here" : "heard"}><Photos ids={telling.photoIds} of={`with ${telling.words}`} isSmall /></Fact></li>
      ))}
      {story.map((telling) => {
        const line = storyLine(telling, { now, zone });
        const label = line.day === lastDay ? line.clock : `${line.day}, ${line.clock}`;
        lastDay = line.day;
        const isMine = line.gone === null && telling.corrects === null && mayTakeBack(line.memberId);
        return (
          <li key={line.id}>
            <Fact label={label} natch={telling === story[0] && kept.length === 0 ? "done" : "none"} note={line.written ?? undefined}>
              <span class={line.gone === null ? undefined : css.gone}><b>{line.words}</b></span>
              <br />
              {joinFacts(line.who, line.gone)}
              {line.note && <p>{line.note}</p>}
              <Photos ids={line.photoIds} of={`with ${line.words}, ${label}`} isSmall />
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
      {more && <li class={css.again}>{more}</li>}
    </Block>
  );
}

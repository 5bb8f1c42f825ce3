/** The lines of a story on its own seam: when, left; what of which piece, right. */
import { Natch } from "../../ui/natch";
import { Evidence } from "../../ui/seam";
import { Photos } from "../common/photos";
import css from "./story.module.css";
import type { StoryLine, StoryWeek } from "./story-view";

/** More marks than this are told together. */
const LINKED = 3;

export function StoryLines({ weeks, isFirst }: { weeks: readonly StoryWeek[]; isFirst: boolean }) {
  const newest = weeks[0]?.lines[0]?.key;
  let last = { day: "", when: "" };
  return (
    <>
      {weeks.map((week) => (
        <section key={week.key} aria-label={week.words}>
          <div class={css.week}><span /><Natch kind="none" /><h3>{week.words}</h3></div>
          <ol>
            {week.lines.map((line) => {
              const when = `${line.day} ${line.clock}`;
              const [isSame, isSameDay] = [when === last.when, line.day === last.day];
              last = { day: line.day, when };
              return <Line key={line.key} line={line} isNewest={isFirst && line.key === newest} isSame={isSame} isSameDay={isSameDay} />;
            })}
          </ol>
        </section>
      ))}
    </>
  );
}

/** The day and the hour stand once; who listens hears them with every line. */
function Line({ line, isNewest, isSame, isSameDay }: { line: StoryLine; isNewest: boolean; isSame: boolean; isSameDay: boolean }) {
  return (
    <li class={css.line}>
      <span class={css.when}>
        <span class={isSame ? "unseen" : undefined}><b class={isSameDay ? "unseen" : undefined}>{line.day}</b> <span class={css.clock}>{line.clock}</span></span>
      </span>
      <Natch kind={isNewest ? "today" : isSame ? "none" : "done"} />
      <div class={`${css.what ?? ""} ${line.marks === "" ? css.ofOrder ?? "" : ""}`}>
        {line.marks !== "" && <MarksOf line={line} />}
        <div>
          <b class={line.isTakenBack ? css.gone : undefined}>{line.words}</b>
          <Evidence words={line.evidence} />
          {line.note !== null && <p class={css.note}>{line.note}</p>}
          <Photos ids={line.photoIds} of={`with ${line.words}, ${line.day} ${line.clock}`} isSmall />
        </div>
      </div>
    </li>
  );
}

function MarksOf({ line: { marks, pieceIds } }: { line: StoryLine }) {
  if (pieceIds.length > LINKED) return <span class={css.marks}>{marks}</span>;
  return <span class={css.marks}>{pieceIds.map(({ id, mark }) => <a key={id} href={`/pieces/${id}`}>{mark}</a>)}</span>;
}

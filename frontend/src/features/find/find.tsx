/** Find anything by a few letters: one field, what was found by kind. Pieces without a signal too. */
import { useState } from "preact/hooks";
import { Field } from "../../ui/act";
import { Asked } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useRested } from "../common/use-rested";
import { askedPath } from "./find-view";
import css from "./find.module.css";
import { useFound } from "./use-find";

export function FindScreen() {
  const [letters, type] = useState("");
  const rested = askedPath(useRested(letters));
  const path = askedPath(letters) === null ? null : rested;
  return (
    <Screen title="Find" isSeam={path !== null}>
      <Asked><Field label="A number, a name, a place, a client" type="search" name="q" value={letters} onType={type} autocomplete="off" /></Asked>
      {path !== null && <Kinds letters={letters} path={path} />}
    </Screen>
  );
}

function Kinds({ letters, path }: { letters: string; path: string }) {
  const { kinds, studio } = useFound(letters, path);
  return (
    <>
      {studio === "unheard" && <p class={css.line} role="status">No answer: only the pieces this phone has heard of.</p>}
      {kinds.map(({ name, count, lines }) => (
        <Block key={name} name={name} count={count ?? undefined} note={count === null || count > lines.length ? "the first; more letters find the rest" : undefined}>
          {lines.map((line) => (
            <Row key={line.id} mark={line.name} noun={line.noun} natch="none" verdict={line.verdict} evidence={line.evidence} href={line.href} spoken={line.spoken} />
          ))}
        </Block>
      ))}
      {kinds.length === 0 && (studio === "asking"
        ? <Fact label="" natch="next" value="Asking" />
        : <Fact label="" natch="done" value="Nothing by that name." note="Try fewer letters, or the shelf it stands on." />)}
    </>
  );
}

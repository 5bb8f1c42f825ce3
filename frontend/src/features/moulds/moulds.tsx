/** Every mould set, driest first to be found by its label, what it makes, whose it is, where it stands. */
import { useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { MouldSetAnswer } from "../../api/shapes-moulds";
import { joinFacts, percent } from "../../domain/format";
import { Field } from "../../ui/act";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useWholeList } from "../common/use-screen";
import { WhenHeard } from "../common/when-heard";
import { drynessWord } from "./dryness";
import css from "./mould.module.css";
import { partNote } from "./mould-words";

const TITLE = "Moulds";

export function MouldsScreen() {
  const screen = useWholeList<Page<MouldSetAnswer>>("mould-sets/");
  const [letters, type] = useState("");
  return (
    <WhenHeard title={TITLE} screen={screen}>
      {({ results }, heardAt) => {
        const found = results.filter((set) => textOf(set).includes(letters.trim().toLowerCase()));
        return (
          <Screen title={TITLE} heardAt={heardAt}>
            <div class={css.form}><Field label="Find by label, part, owner, shelf" type="search" name="q" value={letters} onType={type} /></div>
            <Block name="Sets" count={found.length}>{found.map((set) => <MouldLine key={set.id} set={set} />)}</Block>
            {found.length === 0 && <Fact label="" natch="done" value="No mould by that name." />}
          </Screen>
        );
      }}
    </WhenHeard>
  );
}

function textOf(set: MouldSetAnswer): string {
  return [set.label, set.makes.role, set.makes.design_name, set.owner?.first_name, set.place?.name].join(" ").toLowerCase();
}

function MouldLine({ set }: { set: MouldSetAnswer }) {
  const bad = set.parts.find((part) => part.state === "missing" || part.state === "out_of_use");
  const water = set.dryness.free_water_fraction;
  const verdict = bad ? `${bad.name} ${partNote(bad) ?? ""}` : `${drynessWord(set.dryness)}${water === null ? "" : `, ${percent(water)} water`}`;
  const evidence = joinFacts(set.place?.name, set.owner?.first_name ?? "the studio’s");
  return <Row mark={set.label} noun={set.makes.role} natch={bad ? "done" : "next"} verdict={verdict} evidence={evidence} href={`/moulds/${set.id}`} spoken={`${set.label}, ${set.makes.role}: ${verdict}. ${evidence}`} />;
}

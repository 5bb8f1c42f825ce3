/** The story of an order: newest first, week by week; a late entry shows both times, what was taken back stays to be read. */
import { useState } from "preact/hooks";
import { clock } from "../../domain/clock";
import { Act, Choice } from "../../ui/act";
import { Fact } from "../../ui/seam";
import type { KeptTelling } from "./order-view";
import type { Around } from "./order-words";
import { StoryLines } from "./story-lines";
import css from "./story.module.css";
import { FILTERS, storyWeeks } from "./story-view";
import { useFilter, useOlder, useStory, useTable } from "./use-story";
import type { Story } from "./use-story";

export function OrderStory({ orderId, kept, around }: { orderId: string; kept: readonly KeptTelling[]; around: Around }) {
  const [filter, choose] = useFilter();
  const story = useStory(orderId, filter);
  const table = useTable(orderId);
  const told = new Set(story.rows.map((row) => row.id));
  const fresh = filter === "all" ? kept.filter((telling) => !told.has(telling.id)) : [];
  return (
    <section aria-label="Story">
      <div class={css.filters}><Choice legend="Show" name="filter" options={FILTERS} chosen={filter} onChoose={choose} /></div>
      {fresh.map((telling) => (
        <Fact key={telling.id} label={clock(telling.at, around.zone)} natch={telling.isKept ? "kept" : "today"} value={telling.words} note={telling.isKept ? "kept here" : "heard"} />
      ))}
      <Rows key={filter} story={story} around={around} isFirst={fresh.length === 0} isAll={filter === "all"} />
      <div class={css.older}><Act spoken="This story as a table, to keep or to print" onPress={() => { location.assign(table(filter)); }}>As a table</Act></div>
    </section>
  );
}

function Rows({ story, around, isFirst, isAll }: { story: Story; around: Around; isFirst: boolean; isAll: boolean }) {
  const [isOlder, show] = useState(false);
  const { rows, next, isPartial, failure, isLoading } = story;
  if (rows.length === 0) return <Fact label="" natch={isLoading ? "next" : "done"} value={emptyWords(story, isAll)} note={failure?.message} />;
  return (
    <>
      {isPartial && <p class={css.partial}>Only what this phone has heard; the studio is asked for the rest.</p>}
      <StoryLines weeks={storyWeeks(rows, around)} isFirst={isFirst} />
      {next !== null && !isOlder && <div class={css.older}><Act onPress={() => { show(true); }}>Earlier</Act></div>}
      {next !== null && isOlder && <Older address={next} around={around} />}
    </>
  );
}

function emptyWords({ isLoading, failure }: Story, isAll: boolean): string {
  if (isLoading) return "Asking";
  if (failure !== null) return "Not heard yet";
  return isAll ? "Nothing was told yet." : "Nothing of that kind.";
}

function Older({ address, around }: { address: string; around: Around }) {
  return <Rows story={useOlder(address)} around={around} isFirst={false} isAll />;
}

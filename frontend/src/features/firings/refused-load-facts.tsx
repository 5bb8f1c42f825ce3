/** Who settled it and when, what speaks against each piece, and which load is next. */
import { dayAndClock } from "../../domain/clock";
import { Fact } from "../../ui/seam";
import { slotWords } from "./load-words";
import { shortly } from "./queue-words";
import type { RefusedLoad } from "./refused-load";

export function RefusedLoadFacts({ said, now, zone }: { said: RefusedLoad; now: Date; zone: string }) {
  const { settledAt, settledBy, refused, cautions, nextLoad, asks } = said;
  return (
    <>
      {settledAt && <Fact label={settledBy ? "settled by" : "closed"} value={settledBy ?? dayAndClock(new Date(settledAt), now, zone)} note={settledBy ? dayAndClock(new Date(settledAt), now, zone) : undefined} />}
      {refused.map(({ id, mark, code, detail }) => <Fact key={`${id}${code}`} label={mark} natch="refused" value={shortly(detail, mark)} />)}
      {cautions.map((caution) => <Fact key={caution} label="mind" note={caution} />)}
      {nextLoad && <Fact label="next" natch="next" value={`${nextLoad.number}, ${slotWords(nextLoad.starts_at, zone)}`} note="open for ware, as far as is known here" />}
      {asks && <Fact label="ask" note={`A ${asks} or an owner can say otherwise.`} />}
    </>
  );
}

/** The head of an order: what is wanted and what there is, line by line; the promise; what to mind. */
import type { OrderAnswer, OutlookAnswer } from "../../api/shapes-orders";
import { day } from "../../domain/clock";
import { joinFacts, upperFirst } from "../../domain/format";
import { Fact, Row } from "../../ui/seam";
import { deliveryOf } from "./delivery";
import { against, awayWords, isAllThere, lineOne, outlookOf, promisedWords, rangeAgainst } from "./order-words";
import type { Around } from "./order-words";

interface Head {
  answer: OrderAnswer;
  outlook: OutlookAnswer | null;
  around: Around;
}

export function Lines({ answer: { commission, lines }, outlook }: Head) {
  // A chance is told only for the day it was reckoned for: a day promised here since waits for the studio.
  const ahead = commission.state === "open" && outlook?.promised_date === commission.promised_date ? outlook : null;
  if (lines.length === 0) return <Fact label="" natch="next" value="Nothing wanted yet." note="No line was added to this order." />;
  return (
    <ul>
      {lines.map((line) => {
        const { figure, unit, verdict, evidence } = lineOne(line, outlookOf(ahead, line.id), ahead?.outcomes ?? 0);
        const isMet = line.counts.finished >= line.wanted_sets;
        const what = lines.length > 1 ? line.what : "";
        return (
          <Row
            key={line.id} mark={figure} noun={unit} natch={isMet ? "done" : "today"} verdict={verdict} evidence={joinFacts(what, evidence) || undefined}
            spoken={`${figure} ${unit}: ${verdict}. ${evidence}`}
          />
        );
      })}
    </ul>
  );
}

/** The range against the promise, in words. */
export function Promise({ answer: { commission }, outlook, around }: Head) {
  if (commission.state !== "open") return <Ended answer={{ commission }} around={around} />;
  const { promised, likelyFrom, likelyUntil } = deliveryOf(commission, outlook);
  const range = rangeAgainst(promised, likelyFrom, likelyUntil, around.zone);
  const isLateByDays = ["late", "may_be_late"].includes(against(promised, likelyFrom, likelyUntil));
  const isLate = commission.is_at_risk || isLateByDays;
  // The days beside the promise say it shorter, where they say it at all.
  const risk = commission.is_at_risk && !isLateByDays ? upperFirst(commission.risk_words || "may be late") : null;
  const value = promised === null ? "No day promised" : upperFirst(joinFacts(promisedWords(promised, around), awayWords(promised, around)));
  return <Fact label="promised" natch={promised === null ? "none" : isLate ? "hand" : "next"} value={value} note={isAllThere(outlook) ? "all that was wanted is finished" : joinFacts(risk, upperFirst(range ?? "no likely days yet"))} />;
}

function Ended({ answer: { commission }, around: { now, zone } }: { answer: Pick<OrderAnswer, "commission">; around: Around }) {
  const at = commission.cancelled_at ?? commission.closed_at;
  return <Fact label="" natch="done" value={commission.state === "cancelled" ? "Cancelled" : "Closed"} note={at ? day(new Date(at), now, zone) : undefined} />;
}

export function Warnings({ answer: { warnings } }: Pick<Head, "answer">) {
  return <>{warnings.map((warning) => <Fact key={warning.code + warning.detail} label="mind" natch="hand" value={warning.detail} />)}</>;
}

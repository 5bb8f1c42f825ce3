/** What the order is for, what laboratories wrote, and how to reach the client where that is told. A record, not a judgement. */
import type { OrderAnswer, TestReport } from "../../api/shapes-orders";
import { date } from "../../domain/clock";
import { joinFacts } from "../../domain/format";
import { Act } from "../../ui/act";
import { Block, Fact } from "../../ui/seam";
import { noonOf } from "../../domain/wall";
import { USES } from "./order-words";
import type { Around } from "./order-words";

const UNITS: Record<string, string> = { mg_per_l: "mg/l", mg_per_dm2: "mg/dm²" };

export function UseBlock({ answer: { commission, reports, cautions }, around }: { answer: OrderAnswer; around: Around }) {
  const use = USES[commission.use];
  return (
    <Block name="Use">
      <li><Fact label="for" value={use.words} note={use.note} /></li>
      {cautions.map((caution) => <li key={caution.code + caution.detail}><Fact label="care" natch="hand" value={caution.detail} /></li>)}
      <li><Fact label="papers"><Act spoken={`Papers of ${commission.number}`} href={`/orders/${commission.id}/papers`}>Papers</Act></Fact></li>
      {reports.map((report) => <li key={report.id}><Report report={report} around={around} /></li>)}
    </Block>
  );
}

function Report({ report, around: { now, zone } }: { report: TestReport; around: Around }) {
  const unit = UNITS[report.unit] ?? report.unit;
  const on = noonOf(report.reported_on, zone);
  const figure = (value: number, isBelow: boolean): string => `${isBelow ? "under " : ""}${String(value)} ${unit}`;
  return (
    <Fact
      label="report" value={`Lead ${figure(report.lead_value, report.lead_is_below)}, cadmium ${figure(report.cadmium_value, report.cadmium_is_below)}`}
      note={joinFacts(report.laboratory, on && date(on, now, zone), report.piece ? report.piece.mark : report.glaze)}
    />
  );
}

export function ClientBlock({ answer: { commission }, around: { now, zone } }: { answer: OrderAnswer; around: Around }) {
  return (
    <Block name="Order">
      {commission.client_name !== "" && <li><Fact label="client" value={commission.client_name} note={commission.client_contact === "" ? "no way to reach noted" : commission.client_contact} /></li>}
      <li><Fact label="what" value={commission.what} /></li>
      <li><Fact label="maker" value={commission.maker.first_name} note={`taken ${date(new Date(commission.taken_at), now, zone)}`} /></li>
    </Block>
  );
}

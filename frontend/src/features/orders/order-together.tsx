/** Which jar stands with which lid, the gap of the seat, and what stands alone. */
import type { OrderLine } from "../../api/shapes-orders";
import { length, upperFirst } from "../../domain/format";
import { SmallAct } from "../../ui/act";
import { Block, Fact } from "../../ui/seam";
import { useSession } from "../common/session";
import { part } from "./order-acts";
import { Marks } from "./order-lines";
import css from "./order.module.css";
import { aloneIn, groupsOf, hasSets } from "./together";
import type { Group } from "./together";
import type { Order } from "./use-order";

export function Together({ order }: { order: Order }) {
  const { lines } = order.view.answer;
  const sets = lines.filter((line) => hasSets(line) || line.pieces.some((piece) => piece.partners.length > 0));
  if (sets.length === 0) return null;
  const groups = sets.flatMap(groupsOf);
  return (
    <Block name="Stand together" count={groups.length}>
      {groups.map((group) => <li key={group.key}><Standing group={group} order={order} /></li>)}
      {sets.map((line) => <Alone key={line.id} line={line} />)}
    </Block>
  );
}

function Standing({ group, order }: { group: Group; order: Order }) {
  const { units } = useSession().membership.member;
  const { commission } = order.view.answer;
  const [first, second] = group.pieces;
  if (!first || !second) return null;
  const marks = group.pieces.map((piece) => piece.mark).join(" and ");
  const roles = [...new Set(group.pieces.map((piece) => piece.role ?? piece.noun))].join(" with ");
  const seat = group.gap_mm === null ? "seat not measured" : `seat gap ${length(group.gap_mm, units)}`;
  return (
    <Fact label={first.set === null ? "" : `set ${String(first.set)}`} note={`${upperFirst(roles)} · ${seat}`}>
      <span class={css.pair}>
        <Marks pieces={group.pieces} />
        {commission.may.plan && group.pieces.length === 2 && (
          <SmallAct spoken={`Part ${marks}`} onPress={() => { order.keep(part(commission.id, first, second)); }}>Part</SmallAct>
        )}
      </span>
    </Fact>
  );
}

function Alone({ line }: { line: OrderLine }) {
  const alone = aloneIn(line);
  if (alone.length === 0) return null;
  return (
    <li>
      <Fact label="alone" natch="next" value={alone.length === 1 ? "One stands with nothing" : `${String(alone.length)} stand with nothing`}>
        <Marks pieces={alone} />
      </Fact>
    </li>
  );
}

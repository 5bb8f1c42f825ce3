/** Which jar stands with which lid, the gap of the seat, and what stands alone. */
import type { OrderLine } from "../../api/shapes-orders";
import { length } from "../../domain/format";
import { Block, Evidence, Fact } from "../../ui/seam";
import { useSession } from "../common/session";
import { Marks } from "./order-lines";
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
      {groups.map((group) => <li key={group.key}><Standing group={group} /></li>)}
      {sets.map((line) => <Alone key={line.id} line={line} />)}
    </Block>
  );
}

function Standing({ group }: { group: Group }) {
  const { units } = useSession().membership.member;
  const roles = [...new Set(group.pieces.map((piece) => piece.role ?? piece.noun))].join(" with ");
  const seat = group.gap_mm === null ? "seat not measured" : `seat gap ${length(group.gap_mm, units)}`;
  const set = group.pieces[0]?.set ?? null;
  return (
    <Fact label={set === null ? "" : `set ${String(set)}`}>
      <Marks pieces={group.pieces} />
      <Evidence words={`${roles} · ${seat}`} />
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

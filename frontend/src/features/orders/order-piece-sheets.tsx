/** What is asked of pieces: which to put in the order, which stand together, which to hand over. */
import { useState } from "preact/hooks";
import type { PieceList } from "../../api/shapes-pieces";
import { asTyped } from "../../domain/typed";
import { count, upperFirst } from "../../domain/format";
import { REASON_MOST } from "../../domain/limits";
import { Act, Choice, Field, MainAct } from "../../ui/act";
import { isTooLong } from "../../ui/room-left";
import { Toggles } from "../../ui/toggles";
import { useSession } from "../common/session";
import { useWholeList } from "../common/use-screen";
import { assign, handOver, match, part } from "./order-acts";
import { firstOf, isGivable, linesToMatch, pickable } from "./order-sheet-parts";
import { SheetFrame } from "./sheet-frame";
import css from "./order.module.css";
import { groupsOf, partnersFor } from "./together";
import type { Order } from "./use-order";

/** So many stand to be ticked at once; letters find the rest. */
const SHOWN = 24;

function useTicks(first: readonly string[] = []): [ReadonlySet<string>, (id: string) => void] {
  const [ticked, set] = useState<ReadonlySet<string>>(new Set(first));
  const toggle = (id: string): void => {
    const next = new Set(ticked);
    if (!next.delete(id)) next.add(id);
    set(next);
  };
  return [ticked, toggle];
}

export function AssignSheet({ order }: { order: Order }) {
  const { answer } = order.view;
  const { commission, lines } = answer;
  const screen = useWholeList<PieceList>("pieces/");
  const [letters, type] = useState("");
  const [ticked, toggle] = useTicks();
  const [lineId, choose] = useState(lines[0]?.id ?? "");
  const [reason, say] = useState("");
  const all = screen.state === "ready" ? screen.value.results : [];
  const found = pickable(all, answer, letters);
  const own = lines.flatMap((line) => line.pieces);
  const isOwn = (piece: { id: string }): boolean => own.some((one) => one.id === piece.id);
  const entering = all.filter((piece) => ticked.has(piece.id) && !isOwn(piece));
  const line = lines.find((one) => one.id === lineId) ?? null;
  const leaving = own.filter((piece) => ticked.has(piece.id));
  const main = (
    <MainAct isDisabled={entering.length === 0 || line === null || isTooLong(reason, REASON_MOST)} onPress={() => { if (line) order.keep(assign(commission.id, entering, line, reason)); }}>
      Put {entering.length === 1 ? entering[0]?.mark : count(entering.length, "piece", "pieces")} in
    </MainAct>
  );
  return (
    <SheetFrame order={order} main={main}>
      <Field label="Find a piece by its mark or what it is" type="search" name="piece" value={letters} onType={type} />
      {found.length > 0
        ? <Toggles legend="Not in this order" options={found.slice(0, SHOWN).map(option)} chosen={ticked} onToggle={toggle} />
        : <p>{screen.state === "ready" ? "No piece of that name stands outside this order." : "The pieces were not heard of yet."}</p>}
      {found.length > SHOWN && <p>{found.length - SHOWN} more; type more letters.</p>}
      {lines.length > 1 && <Choice legend="Into which line" name="line" options={lines.map((one) => ({ value: one.id, words: one.what }))} chosen={lineId} onChoose={choose} />}
      <Field label="Why, if there is something to say" name="reason" most={REASON_MOST} value={reason} onType={say} />
      <p>A piece from another order leaves that order. Its past comes along; the other client is not named.</p>
      <details class={css.far}>
        <summary>Take a piece out of this order</summary>
        <Toggles legend="In this order" options={own.map(option)} chosen={ticked} onToggle={toggle} />
        <Act isDisabled={leaving.length === 0 || isTooLong(reason, REASON_MOST)} onPress={() => { order.keep(assign(commission.id, leaving, null, reason)); }}>Take {count(leaving.length, "piece", "pieces")} out</Act>
      </details>
    </SheetFrame>
  );
}

function option(piece: { id: string; mark: string; noun: string; state_words: string }): { value: string; words: string; note: string } {
  return { value: piece.id, words: piece.mark, note: `${piece.noun}, ${piece.state_words}` };
}

export function MatchSheet({ order }: { order: Order }) {
  const { units } = useSession().membership.member;
  const { commission } = order.view.answer;
  const lines = linesToMatch(order.view.answer);
  const { act, wrong, wrongAt } = order.refused.matched;
  const [oneId, chooseOne] = useState<string | null>(null);
  const [otherId, chooseOther] = useState<string | null>(null);
  const [gap, type] = useState(asTyped(act?.body["seat_gap_mm"], units.length));
  const line = lines.find((each) => each.pieces.some((piece) => piece.id === oneId));
  const one = line?.pieces.find((piece) => piece.id === oneId);
  const partners = line && one ? partnersFor(line, one) : [];
  const other = partners.find((piece) => piece.id === otherId);
  const main = (
    <MainAct isDisabled={!one || !other} onPress={() => { if (one && other) order.keep(match(commission.id, [one, other], gap, units)); }}>
      {one && other ? `${other.mark} with ${one.mark}` : "Together"}
    </MainAct>
  );
  return (
    <SheetFrame order={order} main={main}>
      <Choice legend="This one" name="one" options={lines.flatMap(firstOf).map(option)} chosen={oneId} onChoose={(id) => { chooseOne(id); chooseOther(null); }} />
      {one && partners.length > 0 && <Choice legend={`stands with, for ${one.mark}`} name="other" options={partners.map(option)} chosen={otherId} onChoose={chooseOther} />}
      {one && partners.length === 0 && <p>Nothing in this order fits with {one.mark}.</p>}
      {other && other.partners.length > 0 && <p>{other.mark} stands with {other.partners.map((partner) => partner.mark).join(", ")} now; both are kept in the story.</p>}
      <Field label={`Gap of the seat, ${units.length}, if measured`} name="seat_gap_mm" value={gap} onType={type} inputMode={units.length === "mm" ? "decimal" : "text"} wrong={wrongAt("#/seat_gap_mm") ?? wrong} />
      <PartThem order={order} />
    </SheetFrame>
  );
}

/** Away from the rest: pairs that no longer stand together. */
function PartThem({ order }: { order: Order }) {
  const { commission, lines } = order.view.answer;
  const pairs = lines.flatMap(groupsOf).flatMap(({ key, pieces: [one, other, ...more] }) => (one && other && more.length === 0 ? [{ key, one, other }] : []));
  if (pairs.length === 0) return null;
  return (
    <details class={css.far}>
      <summary>Part two that stand together</summary>
      <div class={css.stack}>
        {pairs.map(({ key, one, other }) => (
          <Act key={key} onPress={() => { order.keep(part(commission.id, one, other)); }}>Part {other.mark} from {one.mark}</Act>
        ))}
      </div>
    </details>
  );
}

const CLOSES = [
  { value: "when_all", words: "When all are handed over" },
  { value: "yes", words: "Close it now" },
  { value: "no", words: "Keep it open" },
] as const;

type Closes = (typeof CLOSES)[number]["value"];

/** The second step of a hand-over: which, what to mind, and whether it ends the order. */
export function GiveSheet({ order }: { order: Order }) {
  const { commission, lines, cautions, warnings } = order.view.answer;
  const givable = lines.flatMap((line) => line.pieces).filter(isGivable);
  const [ticked, toggle] = useTicks(givable.map((piece) => piece.id));
  const [closes, choose] = useState<Closes>("when_all");
  const chosen = givable.filter((piece) => ticked.has(piece.id));
  if (givable.length === 0) return <SheetFrame order={order}><p>Nothing is finished yet, so nothing can be handed over.</p></SheetFrame>;
  const main = (
    <MainAct isDisabled={chosen.length === 0} onPress={() => { order.keep(handOver(commission.id, chosen, closes === "when_all" ? null : closes === "yes")); }}>
      Hand over {chosen.length === 1 ? chosen[0]?.mark : chosen.length}
    </MainAct>
  );
  return (
    <SheetFrame order={order} main={main}>
      <Toggles legend={`To ${commission.client_name}`} options={givable.map((piece) => ({ ...option(piece), note: upperFirst(piece.state_words) }))} chosen={ticked} onToggle={toggle} />
      {[...warnings, ...cautions].map((mind) => <p key={mind.code + mind.detail}><b>{mind.detail}</b></p>)}
      <Choice legend="The order closes" name="closes" options={CLOSES} chosen={closes} onChoose={choose} />
    </SheetFrame>
  );
}

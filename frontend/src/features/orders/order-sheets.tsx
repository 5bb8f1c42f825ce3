/** What is asked in place of an order: another day, a piece put in, two stood together, more planned, handed over, ended. */
import { useState } from "preact/hooks";
import { REASON_MOST } from "../../domain/limits";
import { Act, Choice, Count, Field, MainAct } from "../../ui/act";
import { isTooLong } from "../../ui/room-left";
import { close, plan, promise } from "./order-acts";
import type { Closing } from "./order-acts";
import { useMayShare } from "../sharing/use-share";
import { ChangeWordsSheet } from "./order-change-sheet";
import { isGivable, linesToMatch } from "./order-sheet-parts";
import { AssignSheet, GiveSheet, MatchSheet } from "./order-piece-sheets";
import { promisedWords } from "./order-words";
import type { Around } from "./order-words";
import css from "./order.module.css";
import { SheetFrame } from "./sheet-frame";
import type { Order, OrderSheet } from "./use-order";

export interface SheetProps {
  order: Order;
  around: Around;
}

export function OrderSheetScreen({ order, around }: SheetProps) {
  return order.sheet === "none" ? null : <Sheet order={order} around={around} />;
}

function Sheet({ order, around }: SheetProps) {
  switch (order.sheet) {
    case "words":
      return <ChangeWordsSheet order={order} />;
    case "promise":
      return <PromiseSheet order={order} around={around} />;
    case "assign":
      return <AssignSheet order={order} />;
    case "match":
      return <MatchSheet order={order} />;
    case "plan":
      return <PlanSheet order={order} />;
    case "give":
      return <GiveSheet order={order} />;
    case "end":
      return <EndSheet order={order} />;
    default:
      return <ChangeSheet order={order} />;
  }
}

function ChangeSheet({ order }: { order: Order }) {
  const { answer } = order.view;
  const { may, state } = answer.commission;
  const mayShare = useMayShare(answer.commission);
  const isOpen = state === "open";
  const open = (sheet: OrderSheet) => (): void => { order.open(sheet); };
  const hasLines = answer.lines.length > 0;
  const hasGivable = answer.lines.some((line) => line.pieces.some(isGivable));
  return (
    <SheetFrame order={order}>
      <div class={css.stack}>
        <Act isDisabled={!may.change || !isOpen} onPress={open("promise")}>Promise another day…</Act>
        <Act isDisabled={!may.change || !isOpen} onPress={open("words")}>Client, use, a note…</Act>
        <Act isDisabled={!may.plan || !hasLines} onPress={open("assign")}>Put a piece in…</Act>
        {linesToMatch(answer).length > 0 && <Act isDisabled={!may.plan} onPress={open("match")}>Stand two together…</Act>}
        <Act isDisabled={!may.plan || !isOpen || !hasLines} onPress={open("plan")}>Plan more…</Act>
        {mayShare && <Act href={`/orders/${answer.commission.id}/share`}>Share with the client…</Act>}
        <Act isDisabled={!may.change || !hasGivable} onPress={open("give")}>Hand over…</Act>
      </div>
      {!hasGivable && isOpen && <p>Nothing is finished yet, so nothing can be handed over.</p>}
      <div class={css.far}><Act isDisabled={!may.change} onPress={open("end")}>{isOpen ? "Close or cancel…" : "Open it again…"}</Act></div>
    </SheetFrame>
  );
}

function PromiseSheet({ order, around }: SheetProps) {
  const { commission } = order.view.answer;
  const { act, wrong, wrongAt } = order.refused.promised;
  const typed = act?.body["promised_date"];
  const [day, type] = useState(typeof typed === "string" ? typed : commission.promised_date ?? "");
  const [reason, say] = useState("");
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(day);
  const words = isDay ? promisedWords(day, around) : "…";
  const isSame = day === commission.promised_date;
  const fault = wrongAt("#/promised_date") ?? wrong;
  const isPast = isDay && day < around.now.toISOString().slice(0, 10);
  return (
    <SheetFrame
      order={order}
      main={<MainAct isDisabled={!isDay || isSame} onPress={() => { order.keep(promise(commission.id, day, words, reason)); }}>Promise {words}</MainAct>}
    >
      <p>Promised now: {promisedWords(commission.promised_date, around)}. The day it was stays in the story.</p>
      <Field label="Promised day" type="date" name="promised_date" value={day} onType={type} wrong={fault} />
      {isPast && fault === null && <p>That day has gone by.</p>}
      <Field label="Why, for those who read the story" name="reason" most={REASON_MOST} value={reason} onType={say} wrong={wrongAt("#/reason")} />
      {commission.promised_date !== null && (
        <div class={css.far}><Act onPress={() => { order.keep(promise(commission.id, null, "", reason)); }}>Promise no day</Act></div>
      )}
    </SheetFrame>
  );
}

function PlanSheet({ order }: { order: Order }) {
  const { commission, lines } = order.view.answer;
  const [lineId, choose] = useState(lines[0]?.id ?? "");
  const [sets, count] = useState(1);
  const line = lines.find((one) => one.id === lineId);
  const need = order.outlook?.lines.find((one) => one.line_id === lineId)?.press.words ?? "";
  if (!line) return null;
  return (
    <SheetFrame order={order} main={<MainAct isDisabled={line.recipe.length === 0} onPress={() => { order.keep(plan(commission.id, line, sets)); }}>Plan {sets} more</MainAct>}>
      {lines.length > 1 && <Choice legend="Of which line" name="line" options={lines.map((one) => ({ value: one.id, words: one.what }))} chosen={lineId} onChoose={choose} />}
      {need !== "" && <p>{need}</p>}
      <Count label={`Sets of ${line.what}`} figure={sets} least={1} most={60} onCount={count} />
      {line.recipe.length === 0 && <p>This line says nothing of what a set is made of, so nothing can be planned for it from here.</p>}
    </SheetFrame>
  );
}

const ENDINGS = [{ value: "closed", words: "Close it" }, { value: "cancelled", words: "Cancel it" }] as const;

/** The second step of an end; nothing here is the main act. */
function EndSheet({ order }: { order: Order }) {
  const { commission, lines } = order.view.answer;
  const isOpen = commission.state === "open";
  const [kind, choose] = useState<Closing>(isOpen ? "closed" : "reopened");
  const [reason, say] = useState("");
  const left = lines.flatMap((line) => line.pieces).filter((piece) => piece.stage !== "lost" && piece.stage !== "delivered").length;
  const words = { closed: "Close", cancelled: "Cancel", reopened: "Open again:" }[kind];
  return (
    <SheetFrame order={order}>
      {isOpen && <Choice legend={commission.number} name="end" options={ENDINGS} chosen={kind === "cancelled" ? "cancelled" : "closed"} onChoose={choose} />}
      {isOpen && left > 0 && <p>{left} of its pieces are still here. They stay in this order until they are put in another.</p>}
      <Field label={kind === "cancelled" ? "Why" : "Why, if there is something to say"} name="reason" most={REASON_MOST} value={reason} onType={say} />
      <div class={css.far}>
        <Act isDisabled={(kind === "cancelled" && reason.trim() === "") || isTooLong(reason, REASON_MOST)} onPress={() => { order.keep(close(commission.id, kind, reason)); }}>{words} {commission.number}</Act>
        {kind === "cancelled" && reason.trim() === "" && <p>Say why first; the client may ask in a year.</p>}
      </div>
    </SheetFrame>
  );
}

/** What is asked in place of the screen: something else, where to, how far on, back with a reason, lost with a cause. */
import { useState } from "preact/hooks";
import { clock } from "../../domain/clock";
import { upperFirst } from "../../domain/format";
import { CAUSE_MOST, REASON_MOST } from "../../domain/limits";
import { instantOf } from "../../domain/wall";
import { Act, Choice, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { isTooLong } from "../../ui/room-left";
import { PhotoField } from "../common/photos";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import type { TakenPhoto } from "../common/taken-photo";
import { BACK_REASONS, CATCHING_UP, CAUSES, damage, ENDS, loss, move, photograph, standOn, visit } from "./piece-acts";
import type { Loss } from "./piece-acts";
import css from "./piece.module.css";
import { livingParts } from "./piece-words";
import { PlaceChoice } from "./place-choice";
import { furtherOn, isPastHelper, STANDS_ON, WET_STAGES } from "./stage";
import type { Piece, Sheet } from "./use-piece";

const HOME = "/racks";

export function PieceSheet({ piece }: { piece: Piece }) {
  const { mark } = piece.view.answer.piece;
  const [title, body] = sheetOf(piece);
  return (
    <Screen title={mark} when={title} within={HOME} isSeam={false} tray={<Tray><Act onPress={() => { piece.open("none"); piece.backdate(null); }}>Not now</Act></Tray>}>
      {body}
    </Screen>
  );
}

function sheetOf(piece: Piece): [string, preact.JSX.Element] {
  const { id, place } = piece.view.answer.piece;
  switch (piece.sheet) {
    case "move":
      return ["where to?", <PlaceChoice key="move" hereId={place?.id ?? null} onChoose={(to) => { piece.keep(move(id, to)); }} />];
    case "stand":
      return ["stands on", <Stands key="stand" piece={piece} />];
    case "on":
      return ["further on", <FurtherOn key="on" piece={piece} />];
    case "back":
      return ["back, with a reason", <BackMove key="back" piece={piece} />];
    case "photo":
      return ["photo", <Photograph key="photo" piece={piece} />];
    case "damage":
      return ["cracked", <Damage key="damage" piece={piece} />];
    case "end":
      return ["lost", <End key="end" piece={piece} />];
    default:
      return ["something else", <More key="more" piece={piece} />];
  }
}

function More({ piece }: { piece: Piece }) {
  const zone = useZone();
  const { may, view: { answer } } = piece;
  const [typed, type] = useState("");
  const [wrong, setWrong] = useState<string | null>(null);
  const setWhen = (text: string): void => {
    type(text);
    const at = instantOf(text, zone);
    const isAhead = at !== null && at.getTime() > Date.now();
    setWrong(isAhead ? "That has not come yet." : null);
    piece.backdate(isAhead ? null : at);
  };
  const open = (sheet: Sheet) => (): void => { piece.open(sheet); };
  const isAlive = answer.piece.stage !== "lost";
  const isWet = WET_STAGES.includes(answer.piece.stage);
  return (
    <>
      <div class={css.stack}>
        <Act onPress={open("move")} isDisabled={!may.move}>Move…</Act>
        {isWet && <Act onPress={open("stand")} isDisabled={!may.move}>Stands on…</Act>}
        <Act onPress={open("photo")} isDisabled={!may.photo}>Photo…</Act>
        {isAlive && livingParts(answer).length > 0 && <Act onPress={open("damage")} isDisabled={!may.report}>Cracked, chipped, dropped…</Act>}
        {isAlive && <Act onPress={open("touch")} isDisabled={!may.check}>Check by touch…</Act>}
        {isAlive && <Act onPress={open("weigh")} isDisabled={!may.check}>Weigh…</Act>}
        {isAlive && <Act onPress={open("cover")} isDisabled={!may.cover}>Cover…</Act>}
        {answer.piece.state === "drying" && <Act href={`/pieces/${answer.piece.id}/what-if`}>What if: drying…</Act>}
        {isAlive && <Act onPress={open("on")} isDisabled={!may.advance}>It is further on…</Act>}
        {isAlive && <Act href={`/pieces/${answer.piece.id}/ticket`}>Firing ticket…</Act>}
        {answer.backs.length > 0 && <Act onPress={open("back")} isDisabled={!may.advance}>It went back…</Act>}
      </div>
      <Field
        label={piece.happenedAt ? `Happened at ${clock(piece.happenedAt, zone)}, written now` : "When, if it was not just now"}
        type="datetime-local" name="happened_at" value={typed} onType={setWhen} wrong={wrong}
      />
      <div class={css.far}><Act onPress={open("end")} isDisabled={!may.scrap}>Scrap, missing, let go…</Act></div>
    </>
  );
}

/** A tap, for the forecast: plaster draws water, and slats let air to what lies on them. */
function Stands({ piece }: { piece: Piece }) {
  const { id, mark, place, stands_on } = piece.view.answer.piece;
  if (!place) return <p>Say first where {mark} stands: under Move.</p>;
  return (
    <>
      <p>What {mark} stands on in {place.name}. Its dates go by it until it is moved. Left unsaid, they go by the place.</p>
      <div class={css.stack}>
        {STANDS_ON.map(({ value, words }) => (
          <Act key={value} isDisabled={value === stands_on} onPress={() => { piece.keep(standOn(id, place, value)); }}>{upperFirst(words)}{value === stands_on ? ", as said" : ""}</Act>
        ))}
      </div>
    </>
  );
}

/** What happened while nobody wrote it down: any later stage, said to be catching up where the server knows no such step. */
function FurtherOn({ piece }: { piece: Piece }) {
  const { answer } = piece.view;
  const spots = furtherOn(answer.piece.state).filter((spot) => !(piece.may.isHelper && isPastHelper(spot)));
  const isNext = (state: string): boolean => answer.nexts.some((next) => next.state === state);
  if (spots.length === 0) return <p>Nothing lies further on from {answer.piece.state_words}.</p>;
  return (
    <>
      <p>{answer.piece.mark} is {answer.piece.state_words}. Where is it really? What is passed over is written as caught up with.</p>
      <div class={css.stack}>
        {spots.map((spot) => (
          <Act key={spot.state} onPress={() => { piece.keep(visit(answer.piece.id, spot, isNext(spot.state) ? {} : { reason: CATCHING_UP })); }}>{spot.act}</Act>
        ))}
      </div>
    </>
  );
}

function BackMove({ piece }: { piece: Piece }) {
  const { backs, piece: { id, mark, state_words } } = piece.view.answer;
  const [state, choose] = useState<string | null>(backs[0]?.state ?? null);
  const [reason, say] = useState("");
  const spot = backs.find((one) => one.state === state);
  const reasons = BACK_REASONS.map((words) => ({ value: words, words }));
  return (
    <>
      <p>{mark} is {state_words}. Its firings and days stay counted.</p>
      <Choice legend="Back to" name="back" options={backs.map((one) => ({ value: one.state, words: one.words }))} chosen={state} onChoose={choose} />
      <Choice legend="Because" name="reason" options={reasons} chosen={BACK_REASONS.find((words) => words === reason) ?? null} onChoose={say} />
      <Field label="or in your own words" name="own_reason" most={REASON_MOST} value={reason} onType={say} />
      <MainAct isDisabled={!spot || !reason.trim() || isTooLong(reason, REASON_MOST)} onPress={() => { if (spot) piece.keep(visit(id, spot, { reason: reason.trim() })); }}>
        Back to {spot?.words ?? "…"}
      </MainAct>
    </>
  );
}

/** Said by whoever sees it, of anybody's piece; nobody is asked who did it. */
function Damage({ piece }: { piece: Piece }) {
  const { answer } = piece.view;
  const { id, mark, maker } = answer.piece;
  const parts = livingParts(answer);
  const [partId, choose] = useState<string | null>(parts.length === 1 ? parts[0]?.id ?? null : null);
  const [cause, say] = useState("");
  const [photos, change] = useState<TakenPhoto[]>([]);
  const part = parts.find((one) => one.id === partId);
  return (
    <>
      <p>{mark} stays where it is; {maker ? maker.first_name : "its maker"} decides what becomes of it.</p>
      {parts.length > 1 && <Choice legend="Which part" name="part" options={parts.map((one) => ({ value: one.id, words: one.role }))} chosen={partId} onChoose={choose} />}
      <PhotoField photos={photos} onChange={change} />
      <Field label="What is it like, in a few words" name="cause" most={CAUSE_MOST} value={cause} onType={say} />
      <MainAct isDisabled={!part || isTooLong(cause, CAUSE_MOST)} onPress={() => { if (part) piece.keep(damage(id, part, cause.trim(), photos)); }}>{part ? `${part.role}: cracked` : "Say which part"}</MainAct>
    </>
  );
}

function Photograph({ piece }: { piece: Piece }) {
  const { id, mark } = piece.view.answer.piece;
  const [photos, change] = useState<TakenPhoto[]>([]);
  return (
    <>
      <p>Kept with {mark} for good, without the place and the camera. Mind what else is in the picture.</p>
      <PhotoField photos={photos} onChange={change} />
      <MainAct isDisabled={photos.length === 0} onPress={() => { piece.keep(photograph(id, photos)); }}>Keep with {mark}</MainAct>
    </>
  );
}

const RECLAIMS = [{ value: "none", words: "No clay back" }, { value: "plain", words: "Plain clay" }, { value: "mixed", words: "Mixed colours" }] as const;

/** The second step of an ending: how, why, which part; nothing here is the main act. */
function End({ piece }: { piece: Piece }) {
  const { parts, piece: { id, mark, stage } } = piece.view.answer;
  const [ending, change] = useState<Loss>({ state: "scrapped", cause: "", partId: null, isGuess: false, reclaim: null, photos: [] });
  const set = (part: Partial<Loss>): void => { change({ ...ending, ...part }); };
  const isScrap = ending.state === "scrapped";
  const isUnfired = WET_STAGES.includes(stage);
  const causes = CAUSES.map((words) => ({ value: words, words }));
  const words = ENDS.find((end) => end.value === ending.state)?.words ?? "";
  return (
    <>
      <Choice legend={`${mark} is`} name="end" options={ENDS} chosen={ending.state} onChoose={(state) => { set({ state }); }} />
      {isScrap && <Choice legend="Because it is" name="cause" options={causes} chosen={CAUSES.find((one) => one === ending.cause) ?? null} onChoose={(cause) => { set({ cause }); }} />}
      {isScrap && <Field label="or in your own words" name="own_cause" most={CAUSE_MOST} value={ending.cause} onType={(cause) => { set({ cause }); }} />}
      {isScrap && parts.length > 1 && (
        <Choice legend="Which part" name="part" options={parts.map((part) => ({ value: part.id, words: part.role }))} chosen={ending.partId} onChoose={(partId) => { set({ partId }); }} />
      )}
      {isScrap && isUnfired && <Choice legend="Its clay" name="reclaim" options={RECLAIMS} chosen={ending.reclaim} onChoose={(reclaim) => { set({ reclaim }); }} />}
      {isScrap && (
        <label class={css.check}>
          <input type="checkbox" checked={ending.isGuess} onChange={(event) => { set({ isGuess: event.currentTarget.checked }); }} />
          The cause is a guess
        </label>
      )}
      {ending.state !== "missing" && <PhotoField photos={ending.photos} onChange={(photos) => { set({ photos }); }} />}
      <div class={css.far}>
        <Act isDisabled={isScrap && (!ending.cause.trim() || isTooLong(ending.cause, CAUSE_MOST))} onPress={() => { piece.keep(loss(id, { ...ending, cause: isScrap ? ending.cause.trim() : "" })); }}>
          {mark}: {words.toLowerCase()}
        </Act>
        {isScrap && !ending.cause.trim() && <p>Say why first; it tells how many to press next time.</p>}
      </div>
    </>
  );
}

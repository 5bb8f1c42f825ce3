/** One step of a load: what comes of it, what to mind, what it asks; then the act. */
import { useState } from "preact/hooks";
import type { EventKind, Outcome } from "../../api/shapes-firings";
import { count, temperature, upperFirst } from "../../domain/format";
import { REASON_MOST } from "../../domain/limits";
import { instantOf } from "../../domain/wall";
import { Act, Choice, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { isTooLong } from "../../ui/room-left";
import { Toggles } from "../../ui/toggles";
import { Screen } from "../common/screen";
import css from "./kilns.module.css";
import { STEPS } from "./load-acts";
import type { Step } from "./load-acts";
import type { Shown } from "./load";
import { fitWords } from "./load-words";
import { figureOf, sentFigure, toCelsius } from "./reading-typed";
import { NO_SHEET } from "./use-load";

const OUTCOMES = [
  { value: "fired", words: "Fired" }, { value: "not_fired", words: "Not fired" }, { value: "unsure", words: "Not sure", note: "said at unloading" },
] as const;

export function EventSheet({ it, fit, around, kind }: Shown & { kind: EventKind }) {
  const { load } = it;
  const { units, zone, now } = around;
  const step = STEPS[kind];
  const [celsius, typeCelsius] = useState("");
  const [reason, typeReason] = useState("");
  const [outcome, chooseOutcome] = useState<Outcome | null>(null);
  const [looked, look] = useState<ReadonlySet<string>>(new Set());
  const [earlier, typeEarlier] = useState<string | null>(null);
  const [isTried, setTried] = useState(false);
  const figure = figureOf(celsius);
  const wrong = faults({ step, figure, reason, typed: celsius, limit_c: load.limit_c, units });
  const at = earlier === null ? null : instantOf(earlier, zone);
  const isFuture = at !== null && at.getTime() > now.getTime() + 60_000;
  const wrongTime = earlier === null ? null : at === null ? "Say when." : isFuture ? "That is still to come." : null;

  const send = (): void => {
    setTried(true);
    if (wrong.celsius ?? wrong.reason ?? wrongTime) return;
    const note = looked.size === 0 ? "" : `Looked at: ${load.checklist.filter(({ code }) => looked.has(code)).map(({ detail }) => detail.replace(/\.$/, "")).join("; ")}.`;
    it.tell(kind, {
      reason, note, ...(figure === null ? {} : { celsius: sentFigure(figure, units.temperature) }), ...(outcome === null ? {} : { outcome }), ...(at === null ? {} : { happenedAt: at }),
    });
  };
  const tray = (
    <Tray isDead={it.saying.isDead}>
      <MainAct onPress={send}>{kind === "settled" || kind === "called_off" ? `${step.main} ${load.number}` : step.main}</MainAct>
      <Act onPress={() => { it.open(NO_SHEET); }}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={load.number} when={step.title} within="/kilns" isSeam={false} tray={tray}>
      <p>{step.says}</p>
      {kind === "settled" && <SettleWords it={it} fit={fit} around={around} />}
      {load.cautions.map(({ code, detail }) => <p key={code} class={css.said}>{detail}</p>)}
      {kind === "started" && (
        <div class={css.lines}><Toggles
          legend={`Looked at: ${String(looked.size)} of ${String(load.checklist.length)}`} chosen={looked}
          options={load.checklist.map(({ code, detail }) => ({ value: code, words: detail }))}
          onToggle={(code) => { const next = new Set(looked); if (!next.delete(code)) next.add(code); look(next); }}
        /></div>
      )}
      {step.celsius !== "none" && (
        <Field label={`It reads, ${units.temperature === "c" ? "°C" : "°F"}${step.celsius === "may" ? ", if somebody read it" : ""}`} name="celsius" value={celsius} onType={typeCelsius} inputMode="decimal" wrong={isTried ? wrong.celsius : null} />
      )}
      {step.hasOutcome && <Choice legend="Fired?" name="outcome" options={OUTCOMES} chosen={outcome} onChoose={chooseOutcome} />}
      {step.reason !== "none" && <Field label={step.reason === "wanted" ? "Why" : step.reason === "or_celsius" ? "Or why it is opened all the same" : "Anything to say of it"} name="reason" most={REASON_MOST} value={reason} onType={typeReason} wrong={isTried ? wrong.reason : null} />}
      {!step.isClaim && (earlier === null
        ? <Act onPress={() => { typeEarlier(""); }}>It happened earlier…</Act>
        : <Field label="When it happened" name="happened_at" type="datetime-local" value={earlier} onType={typeEarlier} wrong={isTried ? wrongTime : null} />)}
      {step.isClaim && <p class={css.said}>This is asked of the studio: without signal it waits on this phone, and holds once the studio has heard it.</p>}
    </Screen>
  );
}

interface Typed {
  step: Step;
  figure: number | null;
  typed: string;
  reason: string;
  limit_c: number;
  units: Shown["around"]["units"];
}

/** What the studio would refuse for certain is said before it is sent. */
function faults({ step, figure, typed, reason, limit_c, units }: Typed): { celsius: string | null; reason: string | null } {
  const hasReason = reason.trim() !== "";
  // How many are too many stands under the field.
  if (isTooLong(reason, REASON_MOST)) return { celsius: null, reason: "Say it in fewer words." };
  if (typed.trim() !== "" && figure === null) return { celsius: "That is no temperature.", reason: null };
  if (step.reason === "wanted" && !hasReason) return { celsius: null, reason: "Everybody with ware in it will ask. Say why." };
  if (step.celsius !== "or_reason" || hasReason) return { celsius: null, reason: null };
  if (figure === null) return { celsius: "Read it first, or say below why it is opened without.", reason: null };
  const isHot = toCelsius(figure, units.temperature) > limit_c;
  return { celsius: isHot ? `This studio opens at ${temperature(limit_c, units)}. Hot air burns and cold air cracks ware: wait, or say below why.` : null, reason: null };
}

/** Whose ware goes, and whether it fits: read before the list is closed. */
function SettleWords({ it: { load }, fit, around }: Shown) {
  const { verdict } = fitWords(fit, around.units);
  const makers = load.makers.map(({ person, pieces }) => `${person?.first_name ?? "others"} ${String(pieces)}`).join(", ");
  return (
    <>
      <p><b>{upperFirst(count(load.pieces, "piece", "pieces"))}</b>{makers && `: ${makers}.`}</p>
      <p><b>{verdict}.</b> {fit && fit.verdict !== "fits" ? fit.reasons.map(({ detail }) => detail).slice(0, 2).join(" ") : ""}</p>
      {load.placements.filter(({ is_held }) => is_held).map((row) => <p key={row.id}><b>{row.piece?.mark}</b> is held: two stories are told of it. It cannot be settled before one stands.</p>)}
    </>
  );
}

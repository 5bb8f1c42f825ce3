/** The hand of a piece: the next step nearest the thumb, and the small things asked in the hand itself. */
import { useState } from "preact/hooks";
import { upperFirst } from "../../domain/format";
import { asTyped } from "../../domain/typed";
import { Act, Field, MainAct } from "../../ui/act";
import { Pair, Tray } from "../../ui/frame";
import { useSession } from "../common/session";
import { useNow } from "../common/use-now";
import { useGlazes } from "../papers/use-papers";
import { check, cover, coverStep, partEvent, visit, weighing } from "./piece-acts";
import { isDue } from "./covering-words";
import type { CoverStep } from "./covering-words";
import { feelWords } from "./drying-words";
import { livingParts } from "./piece-words";
import css from "./piece.module.css";
import { COVERS, isPastHelper, mainStep, spotOf } from "./stage";
import type { SpotAct } from "./stage";
import type { Piece } from "./use-piece";

const FEELS = ["soft", "leather_hard", "too_stiff", "bone_dry"] as const;
const GRADES = [{ value: "first", words: "First" }, { value: "second", words: "Second" }] as const;

export function PieceTray({ piece }: { piece: Piece }) {
  if (piece.refused.act !== null || piece.sheet === "weigh") return <WeighTray key={piece.refused.act?.id} piece={piece} />;
  switch (piece.sheet) {
    case "cover":
      return <CoverTray piece={piece} />;
    case "touch":
      return <TouchTray piece={piece} />;
    case "grade":
      return <GradeTray piece={piece} />;
    case "glaze":
      return <GlazeTray piece={piece} />;
    default:
      return <StepTray piece={piece} />;
  }
}

/** Whose it is, when this person may only carry it. */
function StepTray({ piece }: { piece: Piece }) {
  const due = useDueStep(piece);
  const { view: { answer }, may, saying } = piece;
  const { state, mark, maker, id } = answer.piece;
  const living = livingParts(answer);
  // A part that is still to be pressed is nothing to join to: what is out is kept soft for it.
  const step = mainStep(state, living.filter((part) => part.state !== "to_press").length <= 1);
  const isDrying = state === "drying";
  const spot = step.kind === "spot" ? step.spot : isDrying ? spotOf("bone_dry") : null;
  const maySpot = may.advance && !(spot !== null && may.isHelper && isPastHelper(spot));
  const move = <Act spoken={`Move ${mark}`} onPress={() => { piece.open("move"); }}>Move</Act>;
  if (!may.cover && !may.check && !may.advance) {
    return <Tray mark={mark} reason={maker ? `${maker.first_name}’s piece` : "nobody has claimed it"} isDead={saying.isDead}>{move}</Tray>;
  }
  const inMould = living.find((part) => part.state === "in_mould");
  const coverAct = <Act spoken={`Cover ${mark}`} isDisabled={!may.cover} onPress={() => { piece.open("cover"); }}>Cover</Act>;
  if (due && may.cover) {
    return (
      <Tray mark={mark} reason="the cover comes first" isDead={saying.isDead}>
        <MainAct spoken={`${mark}: ${due.words}`} onPress={() => { piece.keep(coverStep(id, due)); }}>{upperFirst(due.words)}</MainAct>
        <Act spoken={`Cover ${mark} otherwise`} onPress={() => { piece.open("cover"); }}>Otherwise…</Act>
        {isDrying && <Act spoken={`Weigh ${mark}`} isDisabled={!may.check} onPress={() => { piece.open("weigh"); }}>Weigh</Act>}
      </Tray>
    );
  }
  if (isDrying) {
    return (
      <Tray isDead={saying.isDead}>
        <MainAct isDisabled={!may.check} wide={`Weigh ${mark}`} onPress={() => { piece.open("weigh"); }}>Weigh</MainAct>
        {coverAct}
        {spot && <Act isDisabled={!maySpot} onPress={() => { piece.keep(visit(id, spot)); }}>{spot.act}</Act>}
      </Tray>
    );
  }
  if (step.kind === "demould" && inMould) {
    const role = living.length > 1 ? ` ${inMould.role}` : "";
    return (
      <Tray mark={mark} reason={inMould.role} isDead={saying.isDead}>
        <MainAct spoken={`${mark}${role} out`} wide={`${mark} out`} onPress={() => { piece.keep(partEvent(id, inMould, "demoulded")); }}>Out</MainAct>
        <Act spoken={`${mark}${role} not yet`} onPress={() => { piece.keep(partEvent(id, inMould, "not_yet")); }}>Not yet</Act>
        {move}
      </Tray>
    );
  }
  if (step.kind === "cover") {
    return (
      <Tray isDead={saying.isDead}>
        <MainAct isDisabled={!may.cover} wide={`Cover ${mark}`} onPress={() => { piece.open("cover"); }}>Cover</MainAct>
        {move}
      </Tray>
    );
  }
  const [found] = answer.nexts;
  if (state === "missing" && found) {
    return (
      <Tray isDead={saying.isDead}>
        <MainAct isDisabled={!may.advance} spoken={`${mark} found`} onPress={() => { piece.keep(visit(id, { ...found, act: "Found" }, { reason: "found" })); }}>Found</MainAct>
      </Tray>
    );
  }
  if (step.kind !== "spot") return <Tray isDead={saying.isDead}>{move}</Tray>;
  return <SpotTray piece={piece} spot={step.spot} isAllowed={maySpot} />;
}

/** The change of cover that is due, while nobody has changed the cover since that was reckoned. */
function useDueStep({ view, drying }: Piece): CoverStep | null {
  const now = useNow();
  const [step] = drying?.covering.steps ?? [];
  if (!drying || !step || !isDue(step, now) || view.isCovered) return null;
  const { computed_at, evidence } = drying;
  const isOvertaken = computed_at !== null && evidence.some((seen) => seen.kind === "cover" && new Date(seen.at) > new Date(computed_at));
  return isOvertaken ? null : step;
}

function SpotTray({ piece, spot, isAllowed }: { piece: Piece; spot: SpotAct; isAllowed: boolean }) {
  const { id, mark } = piece.view.answer.piece;
  const press = (): void => {
    if (spot.state === "checked") piece.open("grade");
    else if (spot.state === "glazed") piece.open("glaze");
    else piece.keep(visit(id, spot));
  };
  return (
    <Tray isDead={piece.saying.isDead} {...(isAllowed ? {} : { mark, reason: "the maker says so from here on" })}>
      <MainAct isDisabled={!isAllowed} spoken={`${mark}: ${spot.act}`} onPress={press}>{spot.act}</MainAct>
      <Act spoken={`Move ${mark}`} onPress={() => { piece.open("move"); }}>Move</Act>
    </Tray>
  );
}

function WeighTray({ piece }: { piece: Piece }) {
  const { units } = useSession().membership.member;
  const { refused } = piece;
  const { id, mark } = piece.view.answer.piece;
  const unit = units.mass === "g" ? "g" : "lb oz";
  const [typed, type] = useState(asTyped(refused.act?.body["mass_g"], units.mass));
  const close = (): void => { refused.letGo(); piece.open("none"); };
  return (
    <Tray isFree>
      <form class={css.stack} onSubmit={(event) => { event.preventDefault(); if (typed.trim()) piece.keep(weighing(id, typed, units)); }}>
        <div>
          <Field
            label={`${mark} on the scale, ${unit}`} name="mass_g" value={typed} onType={type} inputMode={units.mass === "g" ? "decimal" : "text"}
            wrong={refused.wrongAt("#/mass_g") ?? refused.wrong}
          />
        </div>
        <Pair>
          <MainAct type="submit" isDisabled={!typed.trim()}>Keep</MainAct>
          <Act onPress={close}>Not now</Act>
        </Pair>
      </form>
    </Tray>
  );
}

function CoverTray({ piece }: { piece: Piece }) {
  const { id, mark, cover: now } = piece.view.answer.piece;
  return (
    <Tray mark={mark} reason={now === "" ? "how is it left?" : `${COVERS.find((one) => one.value === now)?.words.toLowerCase() ?? ""} now`} isFree>
      <div class={css.grid}>
        {COVERS.map((one) => (
          <Act key={one.value} spoken={`${mark}: ${one.words}`} isDisabled={one.value === now} onPress={() => { piece.keep(cover(id, one.value)); }}>{one.words}</Act>
        ))}
        <div class={css.whole}><NotNow piece={piece} /></div>
      </div>
    </Tray>
  );
}

function TouchTray({ piece }: { piece: Piece }) {
  const { answer } = piece.view;
  const loose = answer.parts.filter((part) => part.state === "out" || part.state === "in_mould");
  const [partId, choosePart] = useState<string | null>(loose.length > 1 ? loose[0]?.id ?? null : null);
  const part = loose.find((one) => one.id === partId) ?? null;
  const isCovered = answer.piece.cover !== "" && answer.piece.cover !== "open";
  return (
    <Tray mark={answer.piece.mark} reason={part ? `how does the ${part.role} feel?` : "how does it feel?"} isFree>
      <div class={css.grid}>
        {loose.length > 1 && loose.map((one) => (
          <Act key={one.id} isDisabled={one.id === partId} onPress={() => { choosePart(one.id); }}>{one.role}</Act>
        ))}
        {FEELS.map((feel) => (
          <Act key={feel} onPress={() => { piece.keep(check(answer.piece.id, feel, part)); }}>{feelWords(feel)}</Act>
        ))}
        {isCovered && part === null && (
          <div class={css.whole}><Act onPress={() => { piece.keep(check(answer.piece.id, "fine", null)); }}>{feelWords("fine")}</Act></div>
        )}
        <div class={css.whole}><NotNow piece={piece} /></div>
      </div>
    </Tray>
  );
}

function GradeTray({ piece }: { piece: Piece }) {
  const { id, mark } = piece.view.answer.piece;
  const spot = spotOf("checked");
  return (
    <Tray mark={mark} reason="checked, and sold as" isFree>
      <div class={css.grid}>
        {spot && GRADES.map((grade) => (
          <Act key={grade.value} spoken={`${mark} checked: ${grade.words}`} onPress={() => { piece.keep(visit(id, spot, { grade: grade.value })); }}>{grade.words}</Act>
        ))}
        <div class={css.whole}><NotNow piece={piece} /></div>
      </div>
    </Tray>
  );
}

/** Which batch it was dipped in; it may be left unsaid, and then no report can speak for it. */
function GlazeTray({ piece }: { piece: Piece }) {
  const { id, mark } = piece.view.answer.piece;
  const spot = spotOf("glazed");
  const batches = useGlazes();
  const known = batches.state === "ready" ? batches.value.results : [];
  return (
    <Tray mark={mark} reason="glazed, and dipped in" isFree>
      <div class={css.grid}>
        {spot && known.map((glaze) => (
          <Act key={glaze.id} spoken={`${mark} glazed in ${glaze.label}`} onPress={() => { piece.keep(visit(id, spot, { glaze })); }}>{glaze.label}</Act>
        ))}
        {spot && <Act spoken={`${mark} glazed, batch not said`} onPress={() => { piece.keep(visit(id, spot)); }}>Not said</Act>}
        <div class={css.whole}><NotNow piece={piece} /></div>
      </div>
    </Tray>
  );
}

/** Closes what is asked; nothing is kept. */
function NotNow({ piece }: { piece: Piece }) {
  return <div class={css.stack}><Act onPress={() => { piece.open("none"); }}>Not now</Act></div>;
}

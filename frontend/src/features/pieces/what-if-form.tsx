/** What if, of a piece and of no piece alike: the change that is typed, the button, and the dates that it comes to. */
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { CoverState } from "../../api/shapes-pieces";
import { quantity } from "../../domain/typed";
import { Choice, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { useSession } from "../common/session";
import { useClaim } from "../common/use-claim";
import type { Claim } from "../common/use-claim";
import { useNow } from "../common/use-now";
import { COVERS } from "./stage";
import { Dates } from "./what-if-dates";
import type { IfSo } from "./what-if-dates";
import css from "../studio/studio.module.css";

export interface TypedChange {
  cover: CoverState | null;
  setCover: (cover: CoverState) => void;
  thickness: string;
  setThickness: (typed: string) => void;
  /** As typed, or in millimetres; null where nothing is typed. */
  thickest_mm: string | number | null;
  claim: Claim;
  ifSo: IfSo | null;
  show: (ifSo: IfSo | null) => void;
}

export function useChange(): TypedChange {
  const { units } = useSession().membership.member;
  const [cover, setCover] = useState<CoverState | null>(null);
  const [thickness, setThickness] = useState("");
  const [ifSo, show] = useState<IfSo | null>(null);
  const claim = useClaim();
  const thickest_mm = thickness.trim() === "" ? null : quantity(thickness, units.length, "mm");
  return { cover, setCover, thickness, setThickness, thickest_mm, claim, ifSo, show };
}

export interface FormProps {
  change: TypedChange;
  reckon: () => Promise<void>;
  within: string;
  mark?: string;
  /** What the dates are reckoned from, before *it needs a signal*. */
  from: string;
  /** The thickness as it is, in words. */
  asItIs: string | null;
  /** Whatever else is chosen. */
  children: ComponentChildren;
}

export function WhatIfForm({ change, reckon, within, mark, from, asItIs, children }: FormProps) {
  const now = useNow();
  const { units } = useSession().membership.member;
  const { claim, ifSo } = change;
  const wrong = claim.wrong ?? claim.errors.find(({ pointer }) => pointer !== "#/thickest_mm")?.detail;
  return (
    <Screen title="What if" when={mark} within={within} isSeam={false} tray={<Tray><MainAct isDisabled={claim.isAsking} onPress={() => { void reckon(); }}>{claim.isAsking ? "Reckoning…" : "Reckon"}</MainAct></Tray>}>
      {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
      {ifSo && <Dates ifSo={ifSo} now={now} />}
      <p>{from}: it needs a signal. Nothing is kept and nothing moves.</p>
      <div class={css.stack}>
        {children}
        <Choice legend="Covered" name="cover" options={COVERS} chosen={change.cover} onChoose={change.setCover} />
        <Field label={`Thickness, ${units.length}${asItIs === null ? "" : `; ${asItIs} as it is`}`} name="thickest_mm" inputMode="decimal" value={change.thickness} onType={change.setThickness} wrong={claim.wrongAt("#/thickest_mm")} />
      </div>
    </Screen>
  );
}

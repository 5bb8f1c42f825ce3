/** The dates if something were changed, each beside the one as it is; where they come from, and the picture. */
import { useEffect, useRef } from "preact/hooks";
import type { Quantiles } from "../../api/shapes";
import type { Curve, DryingAnswer } from "../../api/shapes-pieces";
import { dayAndClock } from "../../domain/clock";
import { joinFacts } from "../../domain/format";
import { useZone } from "../common/session";
import { DryingCurve } from "./drying-curve";
import { likely } from "./drying-words";
import css from "../studio/studio.module.css";

type Windows = DryingAnswer["windows"];

export interface IfSo {
  at: string;
  asItIs: Windows;
  windows: Windows;
  curve: Curve | null;
  unreachable: readonly string[];
  confidence: DryingAnswer["confidence"];
  warnings: readonly { code: string; detail: string }[];
  /** What the dates rest on, in sentences. */
  restsOn: readonly string[];
  /** How it was reckoned, line by line; nothing where the piece's own screen says it. */
  working: readonly string[];
}

const ROWS: readonly { label: string; of: (windows: Windows) => Quantiles | null | undefined }[] = [
  { label: "Leather-hard", of: (windows) => windows?.join.opens },
  { label: "Too stiff to join", of: (windows) => windows?.join.closes },
  { label: "Done shrinking", of: (windows) => windows?.shrinkage_ended },
  { label: "Perhaps dry", of: (windows) => windows?.bisque },
];

export function Dates({ ifSo, now }: { ifSo: IfSo; now: Date }) {
  const zone = useZone();
  const top = useRef<HTMLElement>(null);
  // They stand above the form, and the thumb was below it.
  useEffect(() => { top.current?.scrollIntoView(); }, [ifSo]);
  const { asItIs, windows, curve, warnings, restsOn, working } = ifSo;
  const words = (said: Quantiles | null | undefined): string => (said?.p50 ? dayAndClock(new Date(said.p50), now, zone) : "not within three weeks");
  return (
    <section ref={top} class={css.section} aria-label="Dates">
      <h2>If so</h2>
      {windows && ROWS.map(({ label, of }) => (
        <p key={label}>
          <b>{label}: {words(of(windows))}</b>
          <br />
          <span class={css.note}>{joinFacts(likely(of(windows), now, zone), `as it is: ${words(of(asItIs))}`)}</span>
        </p>
      ))}
      {curve && <DryingCurve drying={asDrying(ifSo)} now={now} />}
      {warnings.map(({ code, detail }) => <p key={code}>{detail}</p>)}
      {restsOn.map((sentence) => <p key={sentence} class={css.note}>{sentence}</p>)}
      {working.length > 0 && (
        <details>
          <summary>how it was reckoned</summary>
          <ul>{working.map((line) => <li key={line}>{line}</li>)}</ul>
        </details>
      )}
    </section>
  );
}

/** In the shape of a piece's drying, for the picture. */
function asDrying({ at, curve, windows, unreachable, confidence }: IfSo): DryingAnswer {
  return {
    at, journal_seq: 0, computed_at: at, verdict: "", sentence: "", curve, windows, unreachable: [...unreachable], confidence,
    evidence: [], weighed: null, covering: { cracking: null, steps: [], meeting: null, thin: null }, inputs: {}, assumed: [], sources: [],
  };
}

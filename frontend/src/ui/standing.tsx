/** The head of a thing's own screen: its drawing or mark left of the seam, its verdict large to the right. */
import type { ComponentChildren } from "preact";
import { Natch } from "./natch";
import type { NatchKind } from "./natch";
import { Evidence } from "./seam";
import seam from "./seam.module.css";
import css from "./standing.module.css";

export function Standing({ drawing, natch = "none", verdict, evidence, isLive = false }: {
  drawing: ComponentChildren;
  natch?: NatchKind;
  verdict: string;
  evidence?: string | undefined;
  isLive?: boolean;
}) {
  return (
    <div class={`${seam.grid ?? ""} ${css.standing ?? ""}`}>
      <span class={`${seam.left ?? ""} ${css.drawing ?? ""}`}>{drawing}</span>
      <span class={seam.mid}><Natch kind={natch} /></span>
      <p class={seam.right}>
        <strong class={`${seam.verdict ?? ""} ${seam.large ?? ""} ${isLive ? seam.isLive ?? "" : ""}`}>
          <span class={css.beside} aria-hidden="true">{drawing}</span>
          {verdict}
        </strong>
        {evidence && <Evidence words={evidence} />}
      </p>
    </div>
  );
}

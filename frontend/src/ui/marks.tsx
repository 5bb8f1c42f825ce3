/** Stage marks: one dome, the piece in section, on its bat; 26-unit box, stroke 2. Each stands beside its word. */
import type { ComponentChildren } from "preact";

const DOME = "M4 20a9 9 0 0 1 18 0z";
const SMALL_DOME = "M8 20a5 5 0 0 1 10 0z";
const LINE = "M3 24h20";

const DRAWINGS = {
  model: <path d={DOME} fill="currentColor" stroke="none" />,
  mould: <path d="M2 21V6h22v15h-3a8 8 0 0 0-16 0z" />,
  in_mould: (
    <>
      <path d="M2 6h22v15H2z" />
      <path d="M6 21a7 7 0 0 1 14 0z" fill="currentColor" stroke="none" />
    </>
  ),
  out: <path d="M11 20H3a8 8 0 0 1 8-8zM15 20h8a8 8 0 0 0-8-8z" />,
  joined: <path d={`${DOME}M13 11v9`} />,
  covered: (
    <>
      <path d="M2 21v-4a11 11 0 0 1 22 0v4" />
      <path d="M7 21a6 6 0 0 1 12 0z" fill="currentColor" stroke="none" />
    </>
  ),
  open: (
    <>
      <path d={DOME} />
      <path d="M4 17h18v3H4z" fill="currentColor" stroke="none" />
    </>
  ),
  bone_dry: <path d={DOME} />,
  in_kiln: (
    <>
      <path d="M3 3h20v20H3z" />
      <path d={SMALL_DOME} fill="currentColor" stroke="none" />
    </>
  ),
  bisqued: <path d={`M4 18a9 9 0 0 1 18 0z${LINE}`} />,
  glazed: (
    <>
      <path d={`M4 18a9 9 0 0 1 18 0z${LINE}`} />
      <path d="M8 18a5 5 0 0 1 10 0z" fill="currentColor" stroke="none" />
    </>
  ),
  glaze_fired: (
    <>
      <path d="M4 15a9 9 0 0 1 18 0z" fill="currentColor" stroke="none" />
      <path d="M3 19h20M3 24h20" />
    </>
  ),
  checked: (
    <>
      <path d="M4 19a9 9 0 0 1 18 0z" fill="currentColor" stroke="none" />
      <path d={LINE} />
      <path d="M9.5 14.5l2.5 2.5 4.5-5" stroke="var(--paper)" />
    </>
  ),
  delivered: (
    <>
      <path d="M3 15a8 8 0 0 1 16 0z" fill="currentColor" stroke="none" />
      <path d="M3 20h20M18 15l5 5-5 5" />
    </>
  ),
  lost: <path d="M3 21a10 10 0 0 1 4-8M23 21a10 10 0 0 0-4-8M7 6l12 16M19 6L7 22" />,
} as const;

export type StageMarkName = keyof typeof DRAWINGS;

function Drawing({ size = 26, children }: { size?: number; children: ComponentChildren }) {
  return (
    <svg viewBox="0 0 26 26" width={size} height={size} fill="none" stroke="currentColor" stroke-width="2" aria-hidden="true">
      {children}
    </svg>
  );
}

export function StageMark({ name }: { name: StageMarkName }) {
  return <Drawing>{DRAWINGS[name]}</Drawing>;
}

/** Why it will not come out, in section: the mould is the outlined block, the clay is solid in its hollow. */
const BLOCK = "M2 9v13h22V9";
const CLAY = "M6 9h14c0 6-3 9-7 9s-7-3-7-9z";
const solid = { fill: "currentColor", stroke: "none" };

const FAULTS = {
  hooked_edge: <><path d={`${BLOCK}h-4M2 9h4`} /><path d="M1 4h24v8h-3V9h-2c0 6-3 9-7 9s-7-3-7-9H4v3H1z" {...solid} /></>,
  wet_mould: <><path d={`${BLOCK}h-4M2 9h4`} /><path d={CLAY} {...solid} /><path d="M6 22v3M13 22v3M20 22v3M4.5 12v3M21.5 12v3" /></>,
  undercut: <><path d="M2 7v15h22V7h-6M2 7h6" /><path d="M9 7h8c-1 2 4 4 4 7 0 4-4 5-8 5s-8-1-8-5c0-3 5-5 4-7z" {...solid} /></>,
  still_soft: <><path d={`${BLOCK}h-4M2 9h4`} /><path d="M6 9h4c1 4 5 4 6 0h4c0 6-3 9-7 9s-7-3-7-9z" {...solid} /><path d="M13 1v9" /></>,
  torn: <><path d={`${BLOCK}h-4M2 9h4`} /><path d="M6 9h5l-2 3 3 2-2 4c-3-1-4-4-4-9zM14 9h6c0 5-2 8-6 9l1-4-3-2z" {...solid} /></>,
  shrunk_on: <><path d="M2 24h22" /><path d="M7 23a6 6 0 0 1 12 0" /><path d="M3 23a10 10 0 0 1 20 0h-3a7 7 0 0 0-14 0z" {...solid} /><path d="M13 2v7M9.5 6L13 9.5 16.5 6" /></>,
} as const;

export type FaultName = keyof typeof FAULTS;

export function FaultDrawing({ name }: { name: FaultName }) {
  return <Drawing size={44}>{FAULTS[name]}</Drawing>;
}

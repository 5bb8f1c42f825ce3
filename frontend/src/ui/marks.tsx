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

/** Why it will not come out, in section: the mould is the block, the clay the thick line. */
const FAULTS = {
  hooked_edge: <path d="M2 22V8h22v14M6 8c0 7 3 10 7 10s7-3 7-10M20 8h5v4" />,
  wet_mould: <path d="M2 22V8h22v14M6 8c0 7 3 10 7 10s7-3 7-10M7 22v2M13 21v3M19 22v2" />,
  undercut: <path d="M2 22V6h6c-5 5-4 12 5 12s10-7 5-12h6v16" />,
  still_soft: <path d="M2 22V8h22v14M6 8c0 7 3 10 7 10s7-3 7-10M9 8c2 3 6 3 8 0M13 3v4" />,
  torn: <path d="M2 22V8h22v14M6 8c0 7 3 10 5 10l2-4 2 4c3 0 5-3 5-10" />,
  shrunk_on: <path d="M2 22h22M6 22a7 7 0 0 1 14 0M3 22a10 10 0 0 1 20 0M13 4v5M10.5 6.5L13 9l2.5-2.5" />,
} as const;

export type FaultName = keyof typeof FAULTS;

export function FaultDrawing({ name }: { name: FaultName }) {
  return <Drawing size={44}>{FAULTS[name]}</Drawing>;
}

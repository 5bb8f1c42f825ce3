/** What papers, glaze batches and reports are read from. */
import { useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { GlazeBatch, JudgedReport, PapersFacts, SignedPapers } from "../../api/shapes-orders";
import { studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import type { Claim } from "../common/use-claim";
import { useScreen, useWholeList } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import type { Contact, People } from "./papers-words";

export type PapersSheet = { kind: "none" } | { kind: "sign" } | { kind: "depth"; design: { id: string; name: string } };

export interface Signing {
  people: People;
  declares: boolean;
}

export interface Inside {
  depth: string;
  capacity: string;
  contact: Contact;
}

export interface Papers {
  sheet: PapersSheet;
  open: (sheet: PapersSheet) => void;
  claim: Claim;
  /** A new sheet of the browser with a draft, or with papers that were signed. */
  print: (copyId?: string) => void;
  sign: (signing: Signing) => Promise<void>;
  measure: (designId: string, inside: Inside) => Promise<void>;
}

export function usePapersScreen(orderId: string): Screen<PapersFacts> & { again: () => void } {
  return useScreen<PapersFacts>(`commissions/${orderId}/papers/facts/`);
}

export function useGlazes(): Screen<Page<GlazeBatch>> & { again: () => void } {
  return useWholeList<Page<GlazeBatch>>("glaze-batches/", { every_s: 300 });
}

export function useReports(): Screen<Page<JudgedReport>> & { again: () => void } {
  return useWholeList<Page<JudgedReport>>("test-reports/", { every_s: 300 });
}

export function usePapers(orderId: string, again: () => void): Papers {
  const { slug } = useSession().membership.studio;
  const [sheet, open] = useState<PapersSheet>({ kind: "none" });
  const claim = useClaim();
  const path = (end: string): string => studioPath(slug, end);
  const done = (answer: unknown): void => {
    if (answer === null) return;
    open({ kind: "none" });
    again();
  };
  return {
    sheet, open, claim,
    print: (copyId) => { window.open(path(`commissions/${orderId}/papers/${copyId === undefined ? "" : `${copyId}/`}`), "_blank", "noopener"); },
    sign: async (signing) => {
      done(await claim.claim<{ paper: SignedPapers }>({ method: "POST", path: path(`commissions/${orderId}/papers/`), body: { ...envelope(), ...signing } }));
    },
    measure: async (designId, { depth, capacity, contact }) => {
      const sizes = { ...(depth.trim() === "" ? {} : { inside_depth_mm: depth.trim() }), ...(capacity.trim() === "" ? {} : { capacity_ml: capacity.trim() }) };
      done(await claim.claim({ method: "PATCH", path: path(`designs/${designId}/`), body: { ...envelope(), ...sizes, contact } }));
    },
  };
}

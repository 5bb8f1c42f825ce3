/** The detail of a mould part as it was first photographed, and as it was last. */
import type { InspectionRow } from "../../api/shapes-moulds";

export interface DetailPair {
  partId: string;
  first: InspectionRow;
  /** Null while there is one photo only. */
  latest: InspectionRow | null;
}

/** Of the part photographed last; `looks` come newest first, as the studio lists them. */
export function detailPair(looks: readonly InspectionRow[]): DetailPair | null {
  const seen = looks.filter((look) => look.photo_ids.length > 0);
  const [latest] = seen;
  const first = seen.filter((look) => look.mould_part_id === latest?.mould_part_id).at(-1);
  if (!latest || !first) return null;
  return { partId: latest.mould_part_id, first, latest: first === latest ? null : latest };
}

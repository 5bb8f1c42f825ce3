/** The kilns with what was told here laid over them, and the ware that waits. */
import type { KilnsAnswer, QueueAnswer, QueueGroup } from "../../api/shapes-firings";
import { hasGrant, useSession } from "../common/session";
import { useKeptActs } from "../common/use-outbox";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import { kilnsView } from "./load-overlay";
import type { KilnsView } from "./load-overlay";
import { cautionsIn, rowsIn } from "./told-in-degrees";

export interface Kilns extends KilnsView {
  seq: number;
  cautions: KilnsAnswer["cautions"];
  mayBuild: boolean;
}

export function useKilns(): Screen<Kilns> & { again: () => void } {
  const { membership } = useSession();
  const screen = useScreen<KilnsAnswer>("kilns/");
  const acts = useKeptActs();
  if (screen.state !== "ready") return screen;
  const { units } = membership.member;
  const { journal_seq, cautions } = screen.value;
  const results = screen.value.results.map((kiln) => ({ ...kiln, health: { ...kiln.health, notes: cautionsIn(kiln.health.notes, units) } }));
  return { ...screen, value: { ...kilnsView({ ...screen.value, results }, acts), seq: journal_seq, cautions: cautionsIn(cautions, units), mayBuild: hasGrant(membership, "build_loads") } };
}

export interface Queue {
  rule: string;
  groups: readonly QueueGroup[];
}

/** `room_l`: of a layer that is left; then every group says whose ware gets it. */
export function useQueue(room_l: number | null = null): Queue | null {
  const { units } = useSession().membership.member;
  const screen = useScreen<QueueAnswer>(room_l === null ? "kiln-queue/" : `kiln-queue/?room_l=${String(room_l)}`, { every_s: 300 });
  if (screen.state !== "ready") return null;
  const { rule, groups } = screen.value;
  return { rule, groups: groups.map((group) => ({ ...group, rows: rowsIn(group.rows, units) })) };
}

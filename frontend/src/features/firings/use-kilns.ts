/** The kilns with what was told here laid over them, and the ware that waits. */
import type { KilnsAnswer, QueueAnswer, QueueGroup } from "../../api/shapes-firings";
import { hasGrant, useSession } from "../common/session";
import { useKeptActs } from "../common/use-outbox";
import { useScreen } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import { kilnsView } from "./load-overlay";
import type { KilnsView } from "./load-overlay";

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
  const { journal_seq, cautions } = screen.value;
  return { ...screen, value: { ...kilnsView(screen.value, acts), seq: journal_seq, cautions, mayBuild: hasGrant(membership, "build_loads") } };
}

export interface Queue {
  rule: string;
  groups: readonly QueueGroup[];
}

export function useQueue(): Queue | null {
  const screen = useScreen<QueueAnswer>("kiln-queue/", { every_s: 300 });
  return screen.state === "ready" ? screen.value : null;
}

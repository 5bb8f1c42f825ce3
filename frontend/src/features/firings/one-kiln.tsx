/** Every screen of one kiln: it among the kilns of the studio, with what was told here laid over it. */
import type { ComponentChildren } from "preact";
import type { KilnNow } from "../../api/shapes-firings";
import { Fact } from "../../ui/seam";
import { Screen } from "../common/screen";
import { WhenHeard } from "../common/when-heard";
import { useKilns } from "./use-kilns";
import type { Kilns } from "./use-kilns";

export function OneKiln({ id, children }: { id: string; children: (kiln: KilnNow, kilns: Kilns, heardAt: Date | null, again: () => void) => ComponentChildren }) {
  const screen = useKilns();
  return (
    <WhenHeard title="Kiln" within="/kilns" screen={screen}>
      {(kilns, heardAt) => {
        const kiln = kilns.kilns.find((one) => one.id === id);
        if (kiln === undefined) return <Screen title="Kiln" within="/kilns"><Fact label="" natch="done" value="No such kiln here." /></Screen>;
        return children(kiln, kilns, heardAt, screen.again);
      }}
    </WhenHeard>
  );
}

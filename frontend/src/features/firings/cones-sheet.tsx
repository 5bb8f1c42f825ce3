/** Cones as seen, shelf by shelf: where the hand of a clock would point. A sensor drifts; the cones say what the ware has had. */
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { ConesSeen } from "./cones-seen";
import type { Shown } from "./load";
import { NO_SHEET } from "./use-load";
import { useConesSeen } from "./use-cones-seen";

export function ConesSheet({ it, fit }: Shown) {
  const { load } = it;
  const seen = useConesSeen(load, fit);
  const { typed } = seen;
  const tray = (
    <Tray isDead={it.saying.isDead}>
      <MainAct isDisabled={typed.length === 0} onPress={() => { it.seeCones(typed); }}>{typed.length === 0 ? "None read yet" : `Keep ${String(typed.length)}`}</MainAct>
      <Act onPress={() => { it.open(NO_SHEET); }}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={load.number} when="cones" within="/kilns" isSeam={false} tray={tray}>
      <ConesSeen seen={seen} />
    </Screen>
  );
}

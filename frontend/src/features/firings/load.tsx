/** One load, from its booking to the last piece on the rack: before it is lit its ware, after that its curve. */
import { useEffect } from "preact/hooks";
import type { FitAnswer, LoadAnswer } from "../../api/shapes-firings";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { AddWare } from "./add-ware";
import { ByConeSheet } from "./by-cone-sheet";
import { ChangeLoad } from "./change-load";
import { ConesSheet } from "./cones-sheet";
import { EventSheet } from "./event-sheet";
import { FiringView } from "./load-firing";
import { MoreSheet } from "./load-more";
import { LoadTray } from "./load-tray";
import { WareView } from "./load-ware";
import { loadTitle } from "./load-words";
import type { Around } from "./load-words";
import { PlacementSheet } from "./placement-sheet";
import { UnloadSheet } from "./unload-sheet";
import { useFit, useLoad, useLoadScreen } from "./use-load";
import type { Load } from "./use-load";

const HOME = "/kilns";
const BEFORE_FIRE: ReadonlySet<string> = new Set(["open", "settled", "loading", "called_off"]);

export function LoadScreen({ id = "" }: { id?: string }) {
  const screen = useLoadScreen(id);
  return <WhenHeard title="Load" within={HOME} screen={screen}>{(value, heardAt) => <Ready key={id} snapshot={value} heardAt={heardAt} again={screen.again} />}</WhenHeard>;
}

export interface Shown {
  it: Load;
  fit: FitAnswer | null;
  around: Around;
}

function Ready({ snapshot, heardAt, again }: { snapshot: LoadAnswer; heardAt: Date | null; again: () => void }) {
  const { units } = useSession().membership.member;
  const around = { now: useNow(), zone: useZone(), units };
  const it = useLoad(snapshot);
  const fit = useFit(snapshot.load.id);
  const shown = { it, fit, around };
  const { load, sheet } = it;
  // A list is closed as the studio has it now, not as it was heard a minute ago.
  const isClosing = sheet.name === "event" && sheet.kind === "settled";
  useEffect(() => { if (isClosing) again(); }, [isClosing, again]);
  switch (sheet.name) {
    case "add":
      return <AddWare {...shown} />;
    case "unload":
      return <UnloadSheet {...shown} />;
    case "cones":
      return <ConesSheet {...shown} />;
    case "by_cone":
      return <ByConeSheet {...shown} />;
    case "more":
      return <MoreSheet it={it} />;
    case "change":
      return <ChangeLoad it={it} again={again} />;
    case "event":
      return <EventSheet key={sheet.kind} {...shown} kind={sheet.kind} />;
    case "placement":
      return <PlacementSheet {...shown} id={sheet.id} again={again} />;
    case "none":
    case "ware":
      break;
  }
  const isWare = BEFORE_FIRE.has(load.state) || sheet.name === "ware";
  return (
    <Screen title={load.number} when={loadTitle(load)} within={HOME} heardAt={heardAt} tray={<LoadTray it={it} isWare={isWare} />}>
      <SaidLine mark={load.number} saying={it.saying} />
      {isWare ? <WareView {...shown} /> : <FiringView {...shown} />}
    </Screen>
  );
}

/** A screen that has nothing to show: one sentence and one act. */
import { OfflineError } from "../../api/problem";
import { MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Fact } from "../../ui/seam";
import { Screen } from "./screen";
import type { Failure } from "./use-screen";

export function Failed({ title, within, failure, again }: { title: string; within?: string; failure: Failure; again: () => void }) {
  const isOffline = failure instanceof OfflineError;
  const value = isOffline ? "Nothing heard yet" : failure.problem.title;
  const note = isOffline ? `${failure.message} This phone has not seen this screen before.` : failure.problem.detail;
  return (
    <Screen title={title} {...(within ? { within } : {})} tray={<Tray><MainAct onPress={again}>Ask again</MainAct></Tray>}>
      <Fact label="" natch="done" value={value} note={note} />
    </Screen>
  );
}

export function Waiting({ title, within, isSlow }: { title: string; within?: string; isSlow: boolean }) {
  return (
    <Screen title={title} {...(within ? { within } : {})}>
      <Fact label="" natch="next" value={isSlow ? "Still asking" : "Asking"} />
    </Screen>
  );
}

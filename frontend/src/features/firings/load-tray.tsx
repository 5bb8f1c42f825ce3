/** What can be done to a load from where it is: the next step nearest the thumb. */
import type { EventKind } from "../../api/shapes-firings";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { STEPS } from "./load-acts";
import type { Load, Sheet } from "./use-load";
import { NO_SHEET } from "./use-load";

export function LoadTray({ it, isWare }: { it: Load; isWare: boolean }) {
  const { load, open, saying } = it;
  const { may } = load;
  const go = (sheet: Sheet) => (): void => { open(sheet); };
  const event = (kind: EventKind) => go({ name: "event", kind });
  const hasMore = may.change || may.call_off || may.record;
  const more = hasMore && <Act onPress={go({ name: "more" })}>More…</Act>;
  switch (load.state) {
    case "open":
      return (
        <Tray isDead={saying.isDead}>
          <MainAct isDisabled={!may.add} onPress={go({ name: "add" })}>Add ware</MainAct>
          {may.settle && <Act onPress={event("settled")}>Settle load</Act>}
          {more}
        </Tray>
      );
    case "settled":
      return (
        <Tray isDead={saying.isDead} {...(may.record ? {} : { reason: "Settled: a technician loads it." })}>
          <MainAct isDisabled={!may.record} onPress={event("loading")}>{STEPS.loading.act}</MainAct>
          {may.reopen && <Act onPress={event("reopened")}>{STEPS.reopened.act}</Act>}
          {more}
        </Tray>
      );
    case "loading":
      return (
        <Tray isDead={saying.isDead}>
          <MainAct isDisabled={!may.record} onPress={event("started")}>{STEPS.started.act}</MainAct>
          {may.call_off && <Act onPress={event("called_off")}>{STEPS.called_off.act}</Act>}
        </Tray>
      );
    case "firing":
    case "stopped":
      return (
        <Tray isDead={saying.isDead}>
          <MainAct isDisabled={!may.record} href={may.record ? `/loads/${load.id}/reading` : undefined}>Reading</MainAct>
          {may.record && <Act onPress={go({ name: "cones" })}>Cones</Act>}
          {more}
        </Tray>
      );
    case "cooling":
      return (
        <Tray isDead={saying.isDead}>
          <MainAct isDisabled={!may.record} onPress={event("opened")}>{STEPS.opened.act}</MainAct>
          {may.record && <Act href={`/loads/${load.id}/reading`}>Reading</Act>}
          {more}
        </Tray>
      );
    case "opened":
      return (
        <Tray isDead={saying.isDead}>
          <MainAct isDisabled={!may.record} onPress={go({ name: "unload" })}>{STEPS.unloaded.act}</MainAct>
          {may.record && <Act onPress={go({ name: "cones" })}>Cones</Act>}
        </Tray>
      );
    case "unloaded":
      return (
        <Tray isDead={saying.isDead}>
          {isWare ? <MainAct onPress={go(NO_SHEET)}>Its curve</MainAct> : <MainAct onPress={go({ name: "ware" })}>Pieces in it</MainAct>}
          {may.record && <Act onPress={go({ name: "cones" })}>Cones</Act>}
        </Tray>
      );
    case "called_off":
      return <Tray isDead={saying.isDead}><MainAct href="/kilns">To the kilns</MainAct></Tray>;
  }
}

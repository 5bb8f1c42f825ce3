/** Glaze batches, and what laboratories wrote of them; and one batch written down. */
import { useLocation } from "preact-iso";
import { Act, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { hasGrant, studioPath, useSession, useZone } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import { useDraft } from "../common/use-draft";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { date } from "../../domain/clock";
import { joinFacts } from "../../domain/format";
import { noonOf } from "../../domain/wall";
import css from "./papers.module.css";
import { batchWords, resultsWords } from "./papers-words";
import { useGlazes, useReports } from "./use-papers";

const TITLE = "Glazes";
const HOME = "/glazes";
const WITHIN = "/kilns";

export function GlazesScreen() {
  const screen = useGlazes();
  const heard = useReports();
  const reports = heard.state === "ready" ? heard.value.results : [];
  const { membership } = useSession();
  const now = useNow();
  const zone = useZone();
  const onDay = (day: string): string => date(noonOf(day, zone) ?? now, now, zone);
  const tray = (
    <Tray>
      {hasGrant(membership, "plan_pieces") && <MainAct href="/glazes/new">New batch</MainAct>}
      {hasGrant(membership, "promise_own") && <Act spoken="Write down a test report" href="/reports/new">Report…</Act>}
    </Tray>
  );
  return (
    <WhenHeard title={TITLE} within={WITHIN} screen={screen}>
      {({ results }, heardAt) => (
        <Screen title={TITLE} within={WITHIN} heardAt={heardAt} tray={tray}>
          <Block name="Glaze batches" count={results.length}>
            {results.map((batch) => (
              <Row
                key={batch.id} mark={batch.label} natch="none" verdict={batchWords(batch)} spoken={`${batch.label}: ${batch.name}`}
                evidence={joinFacts(batch.mixed_on && `mixed ${onDay(batch.mixed_on)}`, batch.mixed_by, batch.caution)}
              />
            ))}
          </Block>
          <Block name="Test reports" count={reports.length}>
            {reports.map((report) => (
              <li key={report.id}>
                <Fact
                  label={report.glaze_batch?.label ?? "report"} value={resultsWords(report)}
                  note={joinFacts(report.verdict.words, report.laboratory, `${onDay(report.reported_on)}${report.occasion_name === "" ? "" : `, ${report.occasion_name}`}`)}
                />
              </li>
            ))}
          </Block>
        </Screen>
      )}
    </WhenHeard>
  );
}

const NO_BATCH = { label: "", name: "", mixedOn: "", density: "", cone: "", caution: "" };

export function NewGlazeScreen() {
  const { membership } = useSession();
  const { route } = useLocation();
  const { draft, change, clear } = useDraft("glaze batch", () => NO_BATCH);
  const { claim, isAsking, wrong, wrongAt } = useClaim();
  const send = async (): Promise<void> => {
    const figure = Number(draft.density.replace(",", "."));
    const body = {
      ...envelope(), label: draft.label.trim(), name: draft.name.trim(), cone: draft.cone.trim(), caution: draft.caution.trim(), mixed_by_id: membership.member.id,
      ...(draft.mixedOn === "" ? {} : { mixed_on: draft.mixedOn }),
      ...(draft.density.trim() === "" ? {} : { density_g_per_l: Number.isFinite(figure) ? figure : draft.density.trim() }),
    };
    if ((await claim({ method: "POST", path: studioPath(membership.studio.slug, "glaze-batches/"), body })) === null) return;
    clear();
    route(HOME);
  };
  const tray = (
    <Tray>
      <MainAct isDisabled={isAsking} onPress={() => void send()}>{isAsking ? "Asking" : "Write it down"}</MainAct>
      <Act onPress={() => { clear(); route(HOME); }}>Let it go</Act>
    </Tray>
  );
  return (
    <Screen title="New batch" within={WITHIN} isSeam={false} tray={tray}>
      <div class={css.stack}>
        {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
        <Field label="Label on the bucket" name="label" most={20} value={draft.label} onType={(label) => { change({ label }); }} wrong={wrongAt("#/label")} />
        <Field label="Which glaze" name="name" most={80} value={draft.name} onType={(name) => { change({ name }); }} wrong={wrongAt("#/name")} />
        <Field label="Mixed on" name="mixed_on" type="date" value={draft.mixedOn} onType={(mixedOn) => { change({ mixedOn }); }} wrong={wrongAt("#/mixed_on")} />
        <div class={css.two}>
          <Field label="Density, g/l" name="density_g_per_l" inputMode="decimal" value={draft.density} onType={(density) => { change({ density }); }} wrong={wrongAt("#/density_g_per_l")} />
          <Field label="Cone" name="cone" most={4} value={draft.cone} onType={(cone) => { change({ cone }); }} wrong={wrongAt("#/cone")} />
        </div>
        <Field label="What to mind: manganese, cobalt, a sheet to read" name="caution" most={300} value={draft.caution} onType={(caution) => { change({ caution }); }} wrong={wrongAt("#/caution")} />
        <p class={css.note}>Glaze in powder is dust: mask and gloves, wipe up wet. The sheets that came with the materials come first.</p>
      </div>
    </Screen>
  );
}

/** What a laboratory wrote, typed off its paper. It is kept, not judged; nothing is declared by it. */
import { useLocation } from "preact-iso";
import type { Page } from "../../api/pages";
import type { DesignRow } from "../../api/shapes-moulds";
import { Act, Choice, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Select } from "../../ui/select";
import { Screen } from "../common/screen";
import { studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import { useDraft } from "../common/use-draft";
import { useWholeList } from "../common/use-screen";
import css from "./papers.module.css";
import { batchWords } from "./papers-words";
import { NO_REPORT, reportFields } from "./report-typed";
import type { ReportTyped } from "./report-typed";
import { useGlazes } from "./use-papers";

interface LoadNamed { id: string; number: string; kind: string; cone: string }

const UNIT_CHOICES = [
  { value: "mg_per_l", words: "mg/l", note: "ware that holds something" },
  { value: "mg_per_dm2", words: "mg/dm²", note: "flat, or up to 25 mm deep" },
] as const;

export function NewReportScreen() {
  const { membership: { studio } } = useSession();
  const { route, query } = useLocation();
  const orderId = query["order"] ?? null;
  const home = orderId === null ? "/glazes" : `/orders/${orderId}/papers`;
  const glazes = useGlazes();
  const designs = useWholeList<Page<DesignRow>>("designs/", { every_s: 600 });
  const loads = useWholeList<Page<LoadNamed>>("loads/", { every_s: 600 });
  const { draft, change, clear } = useDraft<ReportTyped>(`report ${orderId ?? ""}`, () => NO_REPORT);
  const { claim, isAsking, wrong, wrongAt } = useClaim();
  const batchList = glazes.state === "ready" ? glazes.value.results : [];
  const designList = designs.state === "ready" ? designs.value.results : [];
  const loadList = loads.state === "ready" ? loads.value.results.filter(({ kind }) => kind === "glaze") : [];
  const send = async (): Promise<void> => {
    const tested = designList.find(({ id }) => id === draft.design) ?? null;
    const body = { ...envelope(), ...reportFields(draft, tested, orderId) };
    if ((await claim({ method: "POST", path: studioPath(studio.slug, "test-reports/"), body })) === null) return;
    clear();
    route(home);
  };
  const tray = (
    <Tray>
      <MainAct isDisabled={isAsking} onPress={() => void send()}>{isAsking ? "Asking" : "Write it down"}</MainAct>
      <Act onPress={() => { clear(); route(home); }}>Let it go</Act>
    </Tray>
  );
  return (
    <Screen title="Test report" within={orderId === null ? "/kilns" : "/orders"} isSeam={false} tray={tray}>
      <div class={css.stack}>
        <p class={css.note}>As the laboratory wrote it, with its “&lt;”. It is kept and not judged; nothing is declared by it.</p>
        {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
        <Select label="Glaze batch" name="batch" none="Not known here" options={batchList.map((batch) => ({ value: batch.id, words: `${batch.label}, ${batchWords(batch)}` }))} chosen={draft.batch} onChoose={(batch) => { change({ batch }); }} />
        <Select label="Out of which glaze load" name="load" none="Not known here" options={loadList.map(({ id, number, cone }) => ({ value: id, words: `${number}, cone ${cone}` }))} chosen={draft.load} onChoose={(load) => { change({ load }); }} />
        <Select label="Ware that was tested" name="design" none="Not known here" options={designList.map(({ id, name }) => ({ value: id, words: name }))} chosen={draft.design} onChoose={(design) => { change({ design }); }} />
        <Field label="Laboratory" name="laboratory" most={120} value={draft.laboratory} onType={(laboratory) => { change({ laboratory }); }} wrong={wrongAt("#/laboratory")} />
        <Field label="Report of" name="reported_on" type="date" value={draft.day} onType={(day) => { change({ day }); }} wrong={wrongAt("#/reported_on")} />
        <Choice legend="Results in" name="unit" options={UNIT_CHOICES} chosen={draft.unit} onChoose={(unit) => { change({ unit }); }} />
        <div class={css.two}>
          <Field label="Lead" name="lead_value" value={draft.lead} onType={(lead) => { change({ lead }); }} wrong={wrongAt("#/lead_value")} />
          <Field label="Cadmium" name="cadmium_value" value={draft.cadmium} onType={(cadmium) => { change({ cadmium }); }} wrong={wrongAt("#/cadmium_value")} />
          <Field label="Lid inside: lead, mg" name="lid_lead_mg" value={draft.lidLead} onType={(lidLead) => { change({ lidLead }); }} wrong={wrongAt("#/lid_lead_mg")} />
          <Field label="Lid inside: cadmium, mg" name="lid_cadmium_mg" value={draft.lidCadmium} onType={(lidCadmium) => { change({ lidCadmium }); }} wrong={wrongAt("#/lid_cadmium_mg") ?? wrongAt("#/volume_ml")} />
        </div>
        {draft.unit === "mg_per_dm2" && draft.lidLead !== "" && <Field label="Area of the vessel, dm²" name="area_dm2" value={draft.area} onType={(area) => { change({ area }); }} wrong={wrongAt("#/area_dm2")} />}
      </div>
    </Screen>
  );
}

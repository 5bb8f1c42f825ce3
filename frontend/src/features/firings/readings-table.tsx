/** Readings as a table, off a controller or a logger: the file is read here, stays as it was, and what is wrong is told line by line. */
import { useState } from "preact/hooks";
import type { KilnReadAnswer, LoadAnswer } from "../../api/shapes-firings";
import { count, temperature } from "../../domain/format";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { LongField } from "../../ui/long-field";
import { Block, Fact } from "../../ui/seam";
import { Screen } from "../common/screen";
import { studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import { useDraft } from "../common/use-draft";
import { WhenHeard } from "../common/when-heard";
import css from "./kilns.module.css";
import { lineFaults } from "./table-faults";
import { useLoadScreen } from "./use-load";

const TITLE = "Readings";

export function ReadingsTableScreen({ id = "" }: { id?: string }) {
  const screen = useLoadScreen(id);
  return <WhenHeard title={TITLE} within="/kilns" screen={screen}>{(snapshot) => <Ready key={id} snapshot={snapshot} again={screen.again} />}</WhenHeard>;
}

function Ready({ snapshot: { load, journal_seq }, again }: { snapshot: LoadAnswer; again: () => void }) {
  const { membership } = useSession();
  const { draft, change, clear } = useDraft(`readings ${load.id}`, () => ({ table: "" }));
  const { claim, isAsking, wrong, errors } = useClaim();
  const [taken, take] = useState<KilnReadAnswer | null>(null);
  const { table } = draft;
  const send = async (): Promise<void> => {
    take(null);
    const body = { ...envelope(), based_on: journal_seq, table };
    const answer = await claim<KilnReadAnswer>({ method: "POST", path: studioPath(membership.studio.slug, `loads/${load.id}/readings/`), body });
    if (answer === null) return;
    take(answer);
    clear();
    change({ table: "" });
    again();
  };
  const read = async (files: FileList | null): Promise<void> => {
    const file = files?.[0];
    if (file) change({ table: await file.text() });
  };
  const faults = lineFaults(errors, table);
  const whole = wrong ?? errors.find(({ pointer }) => pointer === "#/table")?.detail ?? null;
  const back = `/loads/${load.id}/reading`;
  const tray = (
    <Tray>
      {taken === null || table !== ""
        ? <MainAct isDisabled={isAsking || table.trim() === ""} onPress={() => void send()}>{isAsking ? "Asking" : "Keep them"}</MainAct>
        : <MainAct href={`/loads/${load.id}`}>Its curve</MainAct>}
      <Act href={back}>One reading</Act>
    </Tray>
  );
  return (
    <Screen title={load.number} when="readings as a table" within="/kilns" tray={tray}>
      {taken && <Taken answer={taken} />}
      {faults.length > 0 && (
        <Block name="Not kept: look at these lines" count={faults.length}>
          {faults.map(({ line, column, detail, text }) => <li key={`${String(line)}${column}`}><Fact label={`line ${String(line)}`} natch="refused" value={detail} note={`${column} in: ${text}`} /></li>)}
        </Block>
      )}
      <div class={css.form}>
        {whole && <p class={css.wrong} role="alert">{whole}</p>}
        <label class={css.file}>
          <span>A file, as CSV</span>
          <input type="file" accept=".csv,.txt,.tsv,text/csv,text/plain" onChange={(event) => void read(event.currentTarget.files)} />
        </label>
        <LongField label="Its text, as it is sent; it can be mended here" name="table" rows={8} isFigures value={table} onType={(typed) => { change({ table: typed }); }} />
        <p class={css.said}>First line: taken_at,reading_c or reading_f; beside them set_c or set_f, and note, if there are. A time without its zone is the studio’s. A reading that is here already is not kept twice.</p>
      </div>
    </Screen>
  );
}

function Taken({ answer: { stored, repeated, warnings, passed_over, cautions } }: { answer: KilnReadAnswer }) {
  const { units } = useSession().membership.member;
  const already = repeated > 0 ? `${count(repeated, "was", "were")} here already` : undefined;
  return (
    <div role="status">
      <Fact label="kept" natch="today" value={count(stored, "reading", "readings")} note={already} />
      {passed_over.length > 0 && <Fact label="left" note={`columns passed over: ${passed_over.join(", ")}`} />}
      {warnings.map(({ reading_id, detail, instead_c }) => <Fact key={reading_id} label="asked" natch="hand" value={detail} note={instead_c === null ? undefined : `or ${temperature(instead_c, units)}`} />)}
      {cautions.map(({ code, detail }) => <Fact key={code} label="mind" note={detail} />)}
    </div>
  );
}

/** Under the four weeks on a desk: what waits, as a table sorted by the rule; and the load one looks at. */
import { useState } from "preact/hooks";
import type { LoadBrief, QueueRow } from "../../api/shapes-firings";
import { date } from "../../domain/clock";
import { upperFirst } from "../../domain/format";
import { useSession } from "../common/session";
import { StageMark } from "../../ui/marks";
import css from "./kilns.module.css";
import { fitWords, loadTitle, slotWords } from "./load-words";
import { waitsWords } from "./queue-words";
import { ShelfPlans } from "./shelf-plan";
import { useQueue } from "./use-kilns";
import { useFit } from "./use-load";

interface WaitRow extends QueueRow {
  cone: string;
  kind: string;
  /** Its place by the rule, from nought. */
  order: number;
}

type Head = "rule" | "mark" | "cone" | "waits" | "due";

const HEADS: readonly { head: Head; words: string }[] = [
  { head: "mark", words: "Ware" }, { head: "cone", words: "Cone" }, { head: "waits", words: "Ready" }, { head: "due", words: "Promised" }, { head: "rule", words: "By the rule" },
];

function compare(head: Head, one: WaitRow, other: WaitRow): number {
  switch (head) {
    case "rule":
      return one.order - other.order;
    case "mark":
      return one.piece.mark.localeCompare(other.piece.mark, "en", { numeric: true });
    case "cone":
      return one.kind.localeCompare(other.kind) || one.cone.localeCompare(other.cone);
    case "waits":
      return other.waits_days - one.waits_days;
    case "due":
      return (one.due_date ?? "9999").localeCompare(other.due_date ?? "9999");
  }
}

export function WaitingTable({ now, zone }: { now: Date; zone: string }) {
  const queue = useQueue();
  const [head, sortBy] = useState<Head>("rule");
  if (queue === null) return <p class={css.said}>What waits is known once the studio is heard.</p>;
  const rows = queue.groups.flatMap(({ kind, cone, rows: inGroup }) => inGroup.map((row) => ({ ...row, kind, cone }))).map((row, order) => ({ ...row, order }));
  const sorted = [...rows].sort((one, other) => compare(head, one, other));
  return (
    <>
      <p class={css.said}>{queue.rule}</p>
      <table class={css.table}>
        <thead>
          <tr>{HEADS.map((one) => <th key={one.head} scope="col" aria-sort={one.head === head ? "ascending" : "none"}><button type="button" onClick={() => { sortBy(one.head); }}>{one.words}</button></th>)}</tr>
        </thead>
        <tbody>
          {sorted.map((row) => (
            <tr key={row.piece.id}>
              <td><StageMark name={row.kind === "bisque" ? "bone_dry" : "bisqued"} /><a href={`/pieces/${row.piece.id}`}>{row.piece.mark}</a> {row.piece.noun}</td>
              <td>{row.cone || "not said"}</td>
              <td>{waitsWords(row.waits_days)}{row.dry_evidence.ok ? "" : ", dryness not shown"}</td>
              <td>{row.due_date === null ? "" : date(new Date(`${row.due_date}T12:00:00Z`), now, zone)}</td>
              <td>{row.reason}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length === 0 && <p>Nothing waits for a kiln.</p>}
    </>
  );
}

export function ChosenLoad({ load, all, choose, zone }: { load: LoadBrief; all: readonly LoadBrief[]; choose: (id: string) => void; zone: string }) {
  const { units } = useSession().membership.member;
  const fit = useFit(load.id);
  const { verdict, evidence } = fitWords(fit, units);
  const open = load.state === "open" ? `Open until ${slotWords(load.cutoff_at, zone)}` : upperFirst(load.state_words);
  return (
    <>
      <label class={css.pick}>
        <span class="unseen">The load shown</span>
        <select value={load.id} onChange={(event) => { choose(event.currentTarget.value); }}>
          {all.map((one) => <option key={one.id} value={one.id}>{one.number}</option>)}
        </select>
        <span>{loadTitle(load)}, {slotWords(load.times.started_at ?? load.starts_at, zone)}</span>
      </label>
      <p><b>{verdict}.</b> {upperFirst(evidence.replaceAll(" · ", "; "))}. {open}.</p>
      {fit && <ShelfPlans fit={fit} />}
      <p><a href={`/loads/${load.id}`}>{`Open ${load.number}`}</a></p>
    </>
  );
}

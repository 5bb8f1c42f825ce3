/** A load before it is lit: does it fit, when it starts, its shelves to scale, whose ware is on which. */
import type { FitAnswer, Placement } from "../../api/shapes-firings";
import { count, joinFacts, temperature, upperFirst } from "../../domain/format";
import { Act } from "../../ui/act";
import { Block, Fact, Mark, Row } from "../../ui/seam";
import { Standing } from "../../ui/standing";
import css from "./kilns.module.css";
import { Asked, Cautions, Log, Makers, Warnings } from "./load-parts";
import type { Shown } from "./load";
import { levelOf } from "./load-overlay";
import { cutoffWords, fitWords, loadVerdict, placementMark, RESULTS, slotWords } from "./load-words";
import { dueWords, shortly } from "./queue-words";
import { ShelfPlans } from "./shelf-plan";
import { levelName } from "./shelf-words";
import { useCouldGo } from "./use-load";

export function WareView({ it, fit, around }: Shown) {
  const { load } = it;
  const { zone, units } = around;
  const isOpen = load.state === "open";
  const fits = fitWords(fit, units);
  const standing = isOpen ? fits : loadVerdict(load, around);
  const needed = load.programme?.needed;
  return (
    <>
      <Standing drawing={<Mark mark={String(load.placements.length)} noun={load.placements.length === 1 ? "piece" : "pieces"} />} {...standing} />
      {load.needs_kiln && <Fact label="kiln" natch="hand" value="It needs another kiln" note={`${load.kiln.number} is out of use; nothing of it is lost`} />}
      {load.is_in_doubt && <Fact label="" natch="two" value="Two stories of this load" note="what cannot both be so stands in its log"><div class={css.stack}><Act href="/clashes">Say which stands</Act></div></Fact>}
      <Fact label="starts" value={slotWords(load.starts_at, zone)} note={cutoffWords(load, around)} />
      <Fact
        label="fires to" value={joinFacts(load.cone ? `Cone ${load.cone}` : "Cone not said", needed && `about ${temperature(needed.celsius, units)}`)}
        note={joinFacts(load.programme ? `programme ${load.programme.name}, top ${temperature(load.programme.top_c, units)}` : "no programme chosen", load.watcher ? `${load.watcher.first_name} watches` : "nobody is named to watch")}
      />
      {!isOpen && fit && load.state !== "called_off" && <Fact label="fit" value={fits.verdict} note={fits.evidence} />}
      {load.next_slot && (
        <Fact label="next" natch="next" value={load.next_slot.words}>
          {load.next_slot.load && <div class={css.stack}><Act href={`/loads/${load.next_slot.load.id}`}>{`Open ${load.next_slot.load.number}`}</Act></div>}
        </Fact>
      )}
      <Reasons fit={fit} />
      <Warnings load={load} />
      <Asked it={it} />
      {fit && <ShelfPlans fit={fit} />}
      {isOpen && <CouldGo loadId={load.id} around={around} />}
      <Makers load={load} />
      <Shelves it={it} fit={fit} />
      <Cautions cautions={load.cautions} />
      <Log it={it} around={around} />
    </>
  );
}

function Reasons({ fit }: { fit: FitAnswer | null }) {
  if (fit === null || fit.verdict === "fits") return null;
  return <>{fit.reasons.slice(0, 4).map(({ code, detail }, place) => <Fact key={`${code}${String(place)}`} label={place === 0 ? "because" : ""} natch={fit.verdict === "doubtful" ? "guess" : "hand"} value={detail} />)}</>;
}

/** The first of what waits and may go; all of it behind *Add ware*. */
function CouldGo({ loadId, around }: { loadId: string; around: Shown["around"] }) {
  const answer = useCouldGo(loadId);
  const rows = answer?.rows.filter((row) => row.refused === null) ?? [];
  const [first] = rows;
  if (answer === null || first === undefined) return null;
  const due = dueWords(first.due_date, around.now, around.zone);
  const more = rows.length > 1 ? `${count(rows.length - 1, "piece", "pieces")} more ${rows.length === 2 ? "waits" : "wait"}` : null;
  return <Fact label="could go" value={`${first.piece.mark}, ${first.piece.noun}${first.fits === "does_not_fit" ? ": finds no room" : ""}`} note={joinFacts(shortly(upperFirst(first.reason), first.piece.mark), due, more)} />;
}

function Shelves({ it, fit }: Omit<Shown, "around">) {
  const { load } = it;
  const levels = fit?.levels ?? [];
  const byLevel = new Map<number | null, Placement[]>();
  for (const row of load.placements) {
    const level = levelOf(row, levels);
    byLevel.set(level, [...(byLevel.get(level) ?? []), row]);
  }
  const order = [...byLevel.keys()].sort((one, other) => (other ?? 0) - (one ?? 0));
  if (load.placements.length === 0) return <Fact label="" natch="done" value="Nothing is on it yet." note="Ware that is ready is added from the rule’s list." />;
  return (
    <>
      {order.map((level) => (
        <Block key={String(level)} name={level === null ? "On no shelf yet" : levelName(level, Math.max(levels.length, level))} count={byLevel.get(level)?.length}>
          {byLevel.get(level)?.map((row) => <Ware key={row.id} row={row} it={it} />)}
        </Block>
      ))}
    </>
  );
}

function Ware({ row, it }: { row: Placement; it: Shown["it"] }) {
  const mark = placementMark(row);
  const mind = row.warnings[0]?.detail;
  const came = row.came_from?.place?.name;
  const result = row.result in RESULTS ? RESULTS[row.result as keyof typeof RESULTS] : null; // the line before tells which
  const verdict = row.piece === null ? `${row.what}, ${String(row.count)}` : upperFirst(row.piece.design_name);
  const evidence = joinFacts(row.maker?.first_name ?? row.asked_by.first_name, result ?? (mind && shortly(mind, mark)) ??  (row.overrides.length > 0 ? `all the same: ${row.override_reason}` : null), came && `from ${came}`);
  const isEditable = it.load.state === "open" && it.load.may.add;
  const spoken = `${mark}, ${verdict}: ${evidence.replaceAll(" · ", ", ")}.`;
  const natch = row.is_held ? "two" : row.warnings.length > 0 || row.overrides.length > 0 ? "hand" : result === null ? "none" : "done";
  const shown = { mark, noun: row.piece?.noun, natch, verdict: row.is_held ? "Held: two stories" : verdict, evidence, spoken } as const;
  if (isEditable) return <Row {...shown} onChoose={() => { it.open({ name: "placement", id: row.id }); }} />;
  return row.piece ? <Row {...shown} href={`/pieces/${row.piece.id}`} /> : <Row {...shown} />;
}


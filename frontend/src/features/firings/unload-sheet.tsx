/** Unloading in three steps: how the load came out, each shelf ticked off, where it was put. */
import { useState } from "preact/hooks";
import type { Outcome, Placement, Result } from "../../api/shapes-firings";
import { count } from "../../domain/format";
import { Act, Choice, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Toggles } from "../../ui/toggles";
import { Screen } from "../common/screen";
import { PlaceChoice } from "../pieces/place-choice";
import css from "./kilns.module.css";
import type { Shown } from "./load";
import { placementMark, RESULTS } from "./load-words";
import { othersThan, resultsOf, shelvesOf, untold } from "./unload-plan";
import type { UnloadShelf } from "./unload-plan";
import { NO_SHEET } from "./use-load";

const OUTCOMES = [
  { value: "fired", words: "Fired" }, { value: "not_fired", words: "Not fired", note: "goes back to where it was" }, { value: "unsure", words: "Piece by piece" },
] as const;

type Told = ReadonlyMap<string, Result>;

export function UnloadSheet({ it, fit }: Shown) {
  const { load } = it;
  const known = load.outcome === "fired" || load.outcome === "not_fired" ? load.outcome : null;
  const [outcome, choose] = useState<Outcome | null>(known);
  const [step, go] = useState(0);
  const [told, tell] = useState<Told>(new Map());
  const shelves = shelvesOf(load, fit?.levels ?? []);
  const shelf = shelves[step - 1];
  const isLast = step > shelves.length;
  const missing = outcome === null ? [] : untold(outcome, shelf?.rows ?? [], told);
  const keep = (place_id: string): void => {
    if (outcome !== null) it.tell("unloaded", { outcome, results: resultsOf(outcome, told), ...(place_id ? { place_id } : {}) });
  };
  const tray = (
    <Tray isDead={it.saying.isDead} reason={missing.length > 0 ? `${count(missing.length, "piece", "pieces")} to say` : undefined}>
      {isLast
        ? <MainAct onPress={() => { keep(""); }}>No place yet</MainAct>
        : <MainAct isDisabled={outcome === null || missing.length > 0} onPress={() => { go(step + 1); }}>{step === 0 ? "Shelf by shelf" : step < shelves.length ? "Next shelf" : "Where put"}</MainAct>}
      <Act onPress={() => { if (step === 0) it.open(NO_SHEET); else go(step - 1); }}>{step === 0 ? "Not now" : "One back"}</Act>
    </Tray>
  );
  const when = step === 0 ? "unload" : isLast ? "where put" : `${shelf?.name.toLowerCase() ?? ""}, ${String(step)} of ${String(shelves.length)}`;
  return (
    <Screen title={load.number} when={when} within="/kilns" isSeam={false} tray={tray}>
      {step === 0 && load.cautions.map(({ code, detail }) => <p key={code} class={css.said}>{detail}</p>)}
      {step === 0 && <Choice legend="How it came out" name="outcome" options={OUTCOMES} chosen={outcome} onChoose={choose} />}
      {shelf && outcome !== null && <Shelf shelf={shelf} outcome={outcome} told={told} tell={tell} />}
      {isLast && (
        <>
          <p>Where was it put? What came back unfired goes to where it stood before.</p>
          <PlaceChoice hereId={null} onChoose={(place) => { keep(place.id); }} />
        </>
      )}
    </Screen>
  );
}

function Shelf({ shelf, outcome, told, tell }: { shelf: UnloadShelf; outcome: Outcome; told: Told; tell: (told: Told) => void }) {
  const isAsLoad = (row: Placement): boolean => outcome !== "unsure" && (told.get(row.id) ?? outcome) === outcome;
  const others = othersThan(outcome);
  const set = (id: string, result: Result | null): void => {
    const next = new Map(told);
    if (result === null) next.delete(id);
    else next.set(id, result);
    tell(next);
  };
  return (
    <>
      {outcome !== "unsure" && (
        <Toggles
          legend={`${shelf.name}: ticked came out ${RESULTS[outcome]}`} chosen={new Set(shelf.rows.filter(isAsLoad).map(({ id }) => id))}
          options={shelf.rows.map((row) => ({ value: row.id, words: placementMark(row), note: row.piece?.noun ?? `${String(row.count)} of it` }))}
          onToggle={(id) => { set(id, (told.get(id) ?? outcome) === outcome ? others.find((result) => result === "broken") ?? null : null); }}
        />
      )}
      {shelf.rows.filter((row) => !isAsLoad(row)).map((row) => (
        <Choice
          key={row.id} legend={`${placementMark(row)} came out`} name={`result-${row.id}`} options={others.map((value) => ({ value, words: RESULTS[value] }))}
          chosen={told.get(row.id) ?? null} onChoose={(result) => { set(row.id, result); }}
        />
      ))}
      {outcome === "unsure" && <p class={css.said}>Broken ware asks its maker what becomes of it; damp ware goes back to drying.</p>}
    </>
  );
}

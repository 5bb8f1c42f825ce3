/** What a slot is made of: kiln, kind, cone, programme, when, who watches. For a new load, and for changing one. */
import type { FiringKind, KilnNow, Programme } from "../../api/shapes-firings";
import type { Page } from "../../api/pages";
import type { PersonRef } from "../../api/shapes";
import { temperature } from "../../domain/format";
import type { Units } from "../../domain/format";
import { calledBy } from "../../domain/people";
import { Choice, Field } from "../../ui/act";
import { useScreen, useWholeList } from "../common/use-screen";
import type { Screen } from "../common/use-screen";
import { ConePicker } from "./cone-picker";
import { litresWords } from "./queue-words";
import type { Slot } from "./slot";

export const FIRINGS = [{ value: "bisque", words: "Bisque" }, { value: "glaze", words: "Glaze" }, { value: "test", words: "Test" }] as const;

export interface SlotLists {
  programmes: readonly Programme[];
  people: readonly PersonRef[];
}

export function useProgrammes(): Screen<Page<Programme>> & { again: () => void } {
  return useWholeList<Page<Programme>>("programmes/", { every_s: 600 });
}

export function useSlotLists(): SlotLists {
  const programmes = useProgrammes();
  const people = useScreen<Page<PersonRef>>("members/", { every_s: 600 });
  return { programmes: programmes.state === "ready" ? programmes.value.results : [], people: people.state === "ready" ? people.value.results : [] };
}

export interface SlotFieldsProps {
  slot: Slot;
  set: (change: Partial<Slot>) => void;
  kilns: readonly KilnNow[];
  lists: SlotLists;
  units: Units;
  wrongAt: (field: keyof Slot) => string | null;
  /** A load keeps its kind for ever. */
  hasKind: boolean;
}

function kilnNote({ litres, top_c, is_out_of_use }: KilnNow, units: Units): string {
  if (is_out_of_use) return "out of use";
  return `${litresWords(litres)}, to ${temperature(top_c, units)}`;
}

export function SlotFields({ slot, set, kilns, lists: { programmes, people }, units, wrongAt, hasKind }: SlotFieldsProps) {
  const usable = kilns.filter((kiln) => !kiln.is_out_of_use || kiln.id === slot.kilnId);
  const nameOf = calledBy(people);
  const fitting = programmes.filter(({ kind }) => kind === slot.kind);
  return (
    <>
      <Choice legend="Kiln" name="kiln" options={usable.map((kiln) => ({ value: kiln.id, words: `${kiln.number} ${kiln.name}`, note: kilnNote(kiln, units) }))} chosen={slot.kilnId} onChoose={(kilnId) => { set({ kilnId }); }} />
      {hasKind && <Choice<FiringKind> legend="Firing" name="kind" options={FIRINGS} chosen={slot.kind} onChoose={(kind) => { set({ kind, programmeId: null }); }} />}
      <ConePicker cone={slot.cone} onPick={(cone) => { set({ cone }); }} units={units} wrong={wrongAt("cone")} />
      {fitting.length > 0 && (
        <Choice
          legend="Programme" name="programme" chosen={slot.programmeId ?? "none"} onChoose={(value) => { set({ programmeId: value === "none" ? null : value }); }}
          options={[...fitting.map(({ id, name, top_c, cone }) => ({ value: id, words: name, note: `cone ${cone}, ${temperature(top_c, units)}` })), { value: "none", words: "None" }]}
        />
      )}
      <Field label="Starts" name="starts_at" type="datetime-local" value={slot.startsAt} onType={(startsAt) => { set({ startsAt }); }} wrong={wrongAt("startsAt")} />
      <Field label="Open to all until; left empty, two hours before" name="cutoff_at" type="datetime-local" value={slot.cutoffAt} onType={(cutoffAt) => { set({ cutoffAt }); }} wrong={wrongAt("cutoffAt")} />
      {people.length > 0 && (
        <Choice
          legend="Who watches" name="watcher" chosen={slot.watcherId ?? "none"} onChoose={(value) => { set({ watcherId: value === "none" ? null : value }); }}
          options={[...people.map((one) => ({ value: one.id, words: nameOf(one) })), { value: "none", words: "Nobody yet" }]}
        />
      )}
    </>
  );
}

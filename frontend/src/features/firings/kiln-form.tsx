/** What a kiln is made of, as fields: chamber, top temperature, shelves, posts, and how old it was when it was written down. */
import type { ComponentChildren } from "preact";
import type { Units } from "../../domain/format";
import { Act, Choice, Count, Field } from "../../ui/act";
import css from "./kilns.module.css";
import { NO_POST, NO_SHELF } from "./kiln-typed";
import type { Floor, KilnTyped, PostTyped, ShelfTyped } from "./kiln-typed";

const KINDS = [{ value: "front", words: "Front-loading" }, { value: "top", words: "Top-loading" }] as const;
const FLOORS = [{ value: "rect", words: "Square or oblong" }, { value: "round", words: "Round" }] as const;

export interface KilnFormProps {
  typed: KilnTyped;
  change: (part: Partial<KilnTyped>) => void;
  units: Units;
  wrongAt: (pointer: string) => string | null;
}

export function KilnForm({ typed, change, units, wrongAt }: KilnFormProps) {
  const unit = units.length;
  const field = (name: string, label: string, key: keyof KilnTyped & ("number" | "name" | "height" | "top" | "elementsOn" | "firings" | "hotHours" | "sensorFirings" | "remarks"), more: Partial<Parameters<typeof Field>[0]> = {}) => (
    <Field label={label} name={name} value={typed[key]} onType={(value) => { change({ [key]: value }); }} wrong={wrongAt(`#/${name}`)} {...more} />
  );
  return (
    <>
      <div class={css.two}>
        {field("number", "Number: K1", "number", { most: 8 })}
        {field("name", "Name", "name", { most: 60 })}
      </div>
      <Choice legend="Door" name="kind" options={KINDS} chosen={typed.kind} onChoose={(kind) => { change({ kind }); }} />
      <Choice legend="Chamber" name="chamber" options={FLOORS} chosen={typed.chamber} onChoose={(chamber) => { change({ chamber }); }} />
      <FloorFields of={typed} shape={typed.chamber} unit={unit} at="#" change={change} wrongAt={wrongAt} />
      <div class={css.two}>
        {field("height_mm", `High, ${unit}`, "height", { inputMode: "decimal" })}
        {field("top_c", `Top, °${units.temperature.toUpperCase()}`, "top", { inputMode: "decimal" })}
      </div>
      <p class={css.said}>The top is what its maker allows. Natch warns over it, and stops nothing.</p>
      <Shelves typed={typed} change={change} unit={unit} wrongAt={wrongAt} />
      <Posts typed={typed} change={change} unit={unit} wrongAt={wrongAt} />
      <Section name="How old it is">
        {field("elements_changed_on", "Elements changed on, if known", "elementsOn", { type: "date" })}
        <div class={css.two}>
          {field("firings_before", "Firings before Natch", "firings", { inputMode: "numeric" })}
          {field("hot_hours_before", "Hot hours before", "hotHours", { inputMode: "decimal" })}
        </div>
        {field("sensor_firings_before", "Firings of its sensor before", "sensorFirings", { inputMode: "numeric" })}
        {field("remarks", "Notes", "remarks", { most: 300 })}
      </Section>
    </>
  );
}

function Section({ name, children }: { name: string; children: ComponentChildren }) {
  return <section class={css.section} aria-label={name}><h2>{name}</h2>{children}</section>;
}

type FloorTyped = Pick<KilnTyped, "width" | "depth" | "across">;

function FloorFields({ of, shape, unit, at, change, wrongAt }: { of: FloorTyped; shape: Floor; unit: string; at: string; change: (part: Partial<FloorTyped>) => void; wrongAt: (pointer: string) => string | null }) {
  if (shape === "round") return <Field label={`Across, ${unit}`} name={`${at}/diameter_mm`} inputMode="decimal" value={of.across} onType={(across) => { change({ across }); }} wrong={wrongAt(`${at}/diameter_mm`)} />;
  return (
    <div class={css.two}>
      <Field label={`Wide, ${unit}`} name={`${at}/width_mm`} inputMode="decimal" value={of.width} onType={(width) => { change({ width }); }} wrong={wrongAt(`${at}/width_mm`)} />
      <Field label={`Deep, ${unit}`} name={`${at}/depth_mm`} inputMode="decimal" value={of.depth} onType={(depth) => { change({ depth }); }} wrong={wrongAt(`${at}/depth_mm`)} />
    </div>
  );
}

type Part = Omit<KilnFormProps, "units"> & { unit: string };

/** Another row is like the last one: shelves and posts come in sets. */
function Shelves({ typed: { shelves, chamber }, change, unit, wrongAt }: Part) {
  const set = (place: number, part: Partial<ShelfTyped>): void => { change({ shelves: shelves.map((row, here) => (here === place ? { ...row, ...part } : row)) }); };
  return (
    <Section name="Shelves">
      {shelves.length === 0 && <p class={css.said}>None yet. Without shelves and posts nobody can say what fits.</p>}
      {shelves.map((row, place) => {
        const at = `#/shelves/${String(place)}`;
        return (
          <fieldset key={place} class={css.part}>
            <legend>{`Shelf ${String(place + 1)}`}</legend>
            <Choice legend="Shape" name={`shape-${String(place)}`} options={FLOORS} chosen={row.shape} onChoose={(shape) => { set(place, { shape }); }} />
            <FloorFields of={row} shape={row.shape} unit={unit} at={at} change={(part) => { set(place, part); }} wrongAt={wrongAt} />
            <Field label={`Thick, ${unit}`} name={`${at}/thickness_mm`} inputMode="decimal" value={row.thickness} onType={(thickness) => { set(place, { thickness }); }} wrong={wrongAt(`${at}/thickness_mm`)} />
            <Count label="How many alike" figure={row.count} least={1} most={99} onCount={(count) => { set(place, { count }); }} />
            <Act spoken={`Take shelf ${String(place + 1)} out`} onPress={() => { change({ shelves: shelves.filter((_, here) => here !== place) }); }}>Take it out</Act>
          </fieldset>
        );
      })}
      <Act onPress={() => { change({ shelves: [...shelves, shelves.at(-1) ?? { ...NO_SHELF, shape: chamber }] }); }}>{shelves.length === 0 ? "Write a shelf down…" : "Another kind of shelf…"}</Act>
    </Section>
  );
}

function Posts({ typed: { posts }, change, unit, wrongAt }: Part) {
  const set = (place: number, part: Partial<PostTyped>): void => { change({ posts: posts.map((row, here) => (here === place ? { ...row, ...part } : row)) }); };
  return (
    <Section name="Posts">
      {posts.map((row, place) => {
        const at = `#/posts/${String(place)}`;
        return (
          <fieldset key={place} class={css.part}>
            <legend>{`Posts ${String(place + 1)}`}</legend>
            <div class={css.two}>
              <Field label={`High, ${unit}`} name={`${at}/height_mm`} inputMode="decimal" value={row.height} onType={(height) => { set(place, { height }); }} wrong={wrongAt(`${at}/height_mm`)} />
              <Field label={`Foot, ${unit}`} name={`${at}/footprint_mm`} inputMode="decimal" value={row.foot} onType={(foot) => { set(place, { foot }); }} wrong={wrongAt(`${at}/footprint_mm`)} />
            </div>
            <Count label="How many alike" figure={row.count} least={1} most={999} onCount={(count) => { set(place, { count }); }} />
            <Choice
              legend="They stand" name={`inside-${String(place)}`} chosen={row.isInside ? "in" : "out"} onChoose={(value) => { set(place, { isInside: value === "in" }); }}
              options={[{ value: "in", words: "On the shelf", note: "they take room of ware" }, { value: "out", words: "At its edge" }]}
            />
            <Act spoken={`Take posts ${String(place + 1)} out`} onPress={() => { change({ posts: posts.filter((_, here) => here !== place) }); }}>Take them out</Act>
          </fieldset>
        );
      })}
      <Act onPress={() => { change({ posts: [...posts, posts.at(-1) ?? NO_POST] }); }}>{posts.length === 0 ? "Write posts down…" : "Posts of another height…"}</Act>
    </Section>
  );
}

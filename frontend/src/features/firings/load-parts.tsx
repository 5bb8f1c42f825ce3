/** Parts of a load's screen that stand before and after the fire: makers, log, what to mind. */
import type { Caution, LoadEvent, LoadWhole } from "../../api/shapes-firings";
import { twoTimes } from "../../domain/clock";
import { count, joinFacts, temperature, upperFirst } from "../../domain/format";
import { calledBy } from "../../domain/people";
import { Block, Fact } from "../../ui/seam";
import type { Around } from "./load-words";
import { outcomeWords } from "./load-words";
import { litresWords } from "./queue-words";
import type { Load } from "./use-load";

export function Cautions({ cautions, label = "mind" }: { cautions: readonly Caution[]; label?: string }) {
  return <>{cautions.map(({ code, detail }, place) => <Fact key={code} label={place === 0 ? label : ""} note={detail} />)}</>;
}

export function Warnings({ load }: { load: LoadWhole }) {
  return <>{load.warnings.map(({ code, detail }, place) => <Fact key={`${code}${String(place)}`} label={place === 0 ? "look at" : ""} natch="hand" value={detail} />)}</>;
}

export function Makers({ load: { makers } }: { load: LoadWhole }) {
  if (makers.length === 0) return null;
  const nameOf = calledBy(makers.flatMap(({ person }) => (person ? [person] : [])));
  const value = makers.map(({ person, pieces }) => `${person ? nameOf(person) : "others"} ${String(pieces)}`).join(", ");
  const note = makers.map(({ person, litres }) => `${person ? nameOf(person) : "others"} ${litresWords(litres)}`).join(", ");
  return <Fact label={count(makers.length, "maker", "makers").replace(/^\d+ /, "")} value={value} note={note} />;
}

function eventNote({ celsius, reason, note, outcome, is_misfit, is_taken_back }: LoadEvent, { units }: Around): string {
  return joinFacts(
    is_taken_back ? "taken back" : is_misfit ? "cannot follow what else was told" : outcome ? outcomeWords(outcome).toLowerCase() : null,
    celsius === null ? null : temperature(celsius, units), reason || note,
  );
}

/** Newest first; what was taken back stays to be read. */
export function Log({ it, around }: { it: Load; around: Around }) {
  const { now, zone } = around;
  const events = [...it.load.events].sort((one, other) => Date.parse(other.happened_at) - Date.parse(one.happened_at));
  return (
    <Block name="Log" count={events.length}>
      {events.map((event) => (
        <li key={event.id}>
          <Fact
            label={event.member.first_name} natch={event.is_misfit && !event.is_taken_back ? "two" : it.keptIds.has(event.id) ? "kept" : "none"}
            value={`${event.is_taken_back ? "Taken back: " : ""}${event.is_taken_back ? event.words : upperFirst(event.words)}`}
            note={twoTimes(new Date(event.happened_at), new Date(event.written_at), now, zone)}
          >
            <span>{eventNote(event, around)}</span>
          </Fact>
        </li>
      ))}
      {events.length === 0 && <li><Fact label="" natch="done" value="Nothing was told of it yet." /></li>}
    </Block>
  );
}

/** Asked for here and not yet answered: on the load only when the studio says so. */
export function Asked({ it: { asked } }: { it: Load }) {
  if (asked.length === 0) return null;
  return (
    <Block name="Asked for" count={asked.length}>
      {asked.map(({ id, marks, isKept }) => <li key={id}><Fact label="" natch={isKept ? "kept" : "next"} value={marks} note={isKept ? "kept here; whoever is heard first has the room" : "heard; it shows in a moment"} /></li>)}
    </Block>
  );
}

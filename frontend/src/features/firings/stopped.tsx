/** A firing that stopped: what it reached, and the three things it may become. A person chooses; nothing is chosen for them. */
import type { LoadWhole, StopChoice } from "../../api/shapes-firings";
import { dayAndClock } from "../../domain/clock";
import { count, halves, joinFacts, temperature, THIN } from "../../domain/format";
import { Act } from "../../ui/act";
import { Fact } from "../../ui/seam";
import { conesWords } from "./cone-words";
import css from "./kilns.module.css";
import { isEventKind } from "./load-acts";
import type { Shown } from "./load";
import { hotWords } from "./load-words";
import type { Around } from "./load-words";
import type { Load } from "./use-load";

type StoppedShown = Omit<Shown, "fit">;

export function Stopped({ it, around }: StoppedShown) {
  const { load } = it;
  if (load.stopped === null) return <Fact label="" natch="hand" value="What becomes of it is decided next" note="kept here; the studio names the choices when it is heard" />;
  const { caution, choices } = load.stopped;
  return (
    <>
      {stoppedFacts(load, around).map((fact) => <Fact key={fact.label} {...fact} />)}
      <Fact label="mind" note={caution} />
      {load.may.record && choices.map((choice) => (
        <Fact key={choice.code} label="" note={choice.code === "accept_by_cone" ? byConeWords(choice, load) : choice.words}>
          <div class={css.choice}><Act onPress={() => { choose(it, choice); }}>{CHOICES[choice.code]}</Act></div>
        </Fact>
      ))}
      {load.cones.length === 0 && load.may.record && <Fact label="" note={`${count(load.pieces, "piece", "pieces")} in it. Cones read now, or when it is cold, speak louder than hours.`} />}
    </>
  );
}

interface Measured {
  label: string;
  value: string;
  note: string | undefined;
}

/** What was measured of it: the highest reading, how long it was hot, how long it stood, and its cones. */
export function stoppedFacts(load: LoadWhole, { now, zone, units }: Around): Measured[] {
  if (load.stopped === null) return [];
  const { highest_c, highest_at, above_600_h, gap_h, last_c } = load.stopped.facts;
  const reached = highest_c === null ? "Nothing was read" : `${temperature(highest_c, units)}${highest_at ? ` at ${dayAndClock(new Date(highest_at), now, zone)}` : ""}`;
  const hours = joinFacts(
    above_600_h >= 0.25 && hotWords(above_600_h, { units }), gap_h >= 0.25 && `${halves(gap_h)}${THIN}h without power`, last_c !== null && `last ${temperature(last_c, units)}`,
  );
  const cones = conesWords(load.cones);
  return [{ label: "reached", value: reached, note: hours || undefined }, { label: "cones", value: cones?.value ?? "Nobody has read one", note: cones?.note || undefined }];
}

function choose(it: Load, { code, kind, outcome }: StopChoice): void {
  if (code === "accept_by_cone") it.open({ name: "by_cone" });
  else if (isEventKind(kind)) it.tell(kind, { ...(isOutcome(outcome) ? { outcome } : {}) });
}

/** What the studio says of its cones, but for those read here since: it has not heard them. */
function byConeWords({ words }: StopChoice, { cones }: LoadWhole): string {
  return cones.some(({ hand_words }) => hand_words === "") ? "Cones read here are kept; the studio weighs them when it hears of them." : words;
}

const CHOICES = { resume: "Light it again", refire: "Fire it anew, not fired", accept_by_cone: "Fired, by its cones…" } as const;

function isOutcome(outcome: string): outcome is "fired" | "not_fired" | "unsure" {
  return outcome === "fired" || outcome === "not_fired" || outcome === "unsure";
}

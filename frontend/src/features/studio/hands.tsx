/** What members tried and may not do, and what came too late: an owner reads the one and answers the other. */
import { dayAndClock } from "../../domain/clock";
import { SmallAct } from "../../ui/act";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import css from "./studio.module.css";
import { subjectOf, useHeldActs, useRefusedTries } from "./use-hands";

export function RefusedScreen() {
  const screen = useRefusedTries();
  const zone = useZone();
  const now = useNow();
  const title = "What was refused";
  return (
    <WhenHeard title={title} screen={screen}>
      {({ results }, heardAt) => (
        <Screen title={title} within="/more" heardAt={heardAt} isSeam={false}>
          {results.length === 0 && <p>Nobody tried what they may not do.</p>}
          {results.map((row) => (
            <div key={row.id} class={css.line}>
              <p>
                <b>{row.member.first_name}</b>, {row.member.initials}: {row.method === "DELETE" ? "take away " : ""}{subjectOf(row.path)}
                <br />
                <span class={css.note}>{dayAndClock(new Date(row.tried_at), now, zone)}{row.device && ` · ${row.device}`}{row.needed && ` · takes: ${row.needed.replaceAll("_", " ")}`}</span>
              </p>
            </div>
          ))}
        </Screen>
      )}
    </WhenHeard>
  );
}

const WHY = { left: "after leaving", signed_off: "from a phone signed off" } as const;

export function HeldScreen() {
  const { screen, claim, answer } = useHeldActs();
  const zone = useZone();
  const now = useNow();
  const title = "Came too late";
  return (
    <WhenHeard title={title} screen={screen}>
      {({ results }, heardAt) => (
        <Screen title={title} within="/more" heardAt={heardAt} isSeam={false}>
          {results.length === 0 && <p>Nothing waits for your word.</p>}
          {claim.wrong && <p class={css.wrong} role="alert">{claim.wrong}</p>}
          {results.map((row) => (
            <section key={row.id} class={css.section} aria-label={`${row.member.first_name}: ${subjectOf(row.path)}`}>
              <p>
                <b>{row.member.first_name}</b>, {row.member.initials}: {subjectOf(row.path)}
                <br />
                <span class={css.note}>{dayAndClock(new Date(row.happened_at), now, zone)} · heard {WHY[row.why]} · {row.device}</span>
              </p>
              <div class={css.two}>
                <SmallAct onPress={() => { void answer(row.id, false); }} isDisabled={claim.isAsking}>Not taken</SmallAct>
                <SmallAct onPress={() => { void answer(row.id, true); }} isDisabled={claim.isAsking}>Take it</SmallAct>
              </div>
            </section>
          ))}
        </Screen>
      )}
    </WhenHeard>
  );
}

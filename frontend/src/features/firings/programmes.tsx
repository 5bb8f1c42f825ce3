/** The studio's programmes: what each fires to, how long it takes, and what its cone needs at its last rate. */
import type { Programme } from "../../api/shapes-firings";
import { halves, joinFacts, temperature, THIN, upperFirst } from "../../domain/format";
import type { Units } from "../../domain/format";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { hasGrant, useSession } from "../common/session";
import { WhenHeard } from "../common/when-heard";
import { FIRINGS, useProgrammes } from "./slot-fields";

const TITLE = "Programmes";

export function ProgrammesScreen() {
  const screen = useProgrammes();
  return <WhenHeard title={TITLE} within="/kilns" screen={screen}>{({ results }, heardAt) => <Ready programmes={results} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ programmes, heardAt }: { programmes: readonly Programme[]; heardAt: Date | null }) {
  const { membership } = useSession();
  const mayPlan = hasGrant(membership, "plan_firings");
  const tray = <Tray>{mayPlan && <MainAct href="/programmes/new">New programme</MainAct>}<Act href="/kilns">To the kilns</Act></Tray>;
  return (
    <Screen title={TITLE} within="/kilns" heardAt={heardAt} tray={tray}>
      {FIRINGS.map(({ value, words }) => {
        const rows = programmes.filter(({ kind }) => kind === value);
        return rows.length > 0 && <Block key={value} name={words} count={rows.length}>{rows.map((row) => <Line key={row.id} programme={row} units={membership.member.units} mayPlan={mayPlan} />)}</Block>;
      })}
      {programmes.length === 0 && <Fact label="" natch="done" value="No programme is written down." note={mayPlan ? "Press New programme." : "Whoever plans firings writes the first."} />}
    </Screen>
  );
}

export function programmeWords({ cone, top_c, hours, segments, needed, warnings }: Programme, units: Units): { verdict: string; evidence: string } {
  const [doubt] = warnings;
  const legs = segments.map(({ to_c, hold_min }) => `${temperature(to_c, units)}${hold_min > 0 ? ` held ${String(hold_min)}${THIN}min` : ""}`).join(", ");
  return {
    verdict: `Cone ${cone}, top ${temperature(top_c, units)}`,
    evidence: joinFacts(doubt?.detail, hours !== null && `${halves(hours)}${THIN}h`, needed && `the cone needs about ${temperature(needed.celsius, units)}`, legs || "no legs written down"),
  };
}

function Line({ programme, units, mayPlan }: { programme: Programme; units: Units; mayPlan: boolean }) {
  const { verdict, evidence } = programmeWords(programme, units);
  const words = { mark: programme.cone, noun: "cone", natch: programme.warnings.length > 0 ? "hand" : "none", verdict: upperFirst(programme.name), evidence: joinFacts(verdict, ...evidence.split(" · ")), spoken: `${programme.name}: ${verdict}. ${evidence.replaceAll(" · ", ", ")}.` } as const;
  return mayPlan ? <Row {...words} href={`/programmes/${programme.id}`} /> : <Row {...words} />;
}

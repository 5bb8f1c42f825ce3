/** Cones as seen, shelf by shelf: where the hand of a clock would point. A sensor drifts; the cones say what the ware has had. */
import { useState } from "preact/hooks";
import type { ConeRole } from "../../api/shapes-firings";
import { Act, Choice, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { useSession } from "../common/session";
import { ConePicker } from "./cone-picker";
import { coneSet, HANDS } from "./cone-series";
import type { Hand } from "./cone-series";
import css from "./kilns.module.css";
import type { ConeTyped } from "./load-acts";
import type { Shown } from "./load";
import { levelName } from "./shelf-words";
import { NO_SHEET } from "./use-load";

const ROLES = [{ role: "firing", words: "The firing cone" }, { role: "guide", words: "The guide, one cooler" }, { role: "guard", words: "The guard, one hotter" }] as const;

type Seen = Record<string, Hand>;

export function ConesSheet({ it, fit }: Shown) {
  const { load } = it;
  const { units } = useSession().membership.member;
  const levels = fit?.levels.map(({ level }) => level).sort((one, other) => other - one) ?? [];
  const [level, chooseLevel] = useState(String(levels[0] ?? 0));
  const [seen, see] = useState<Seen>({});
  const [cones, pick] = useState<Record<ConeRole, string>>(() => {
    const { guide, firing, guard } = coneSet(load.cone);
    return { guide: guide ?? "", firing, guard: guard ?? "" };
  });
  const typed: ConeTyped[] = Object.entries(seen).flatMap(([key, hand]) => {
    const [at, role] = key.split(" ");
    const known = ROLES.find((one) => one.role === role)?.role;
    return known === undefined || cones[known].trim() === "" ? [] : [{ level: Number(at) || null, role: known, cone: cones[known].trim(), hand: Number(hand) }];
  });
  const options = (levels.length > 0 ? levels : [0]).map((one) => ({
    value: String(one), words: one === 0 ? "Anywhere in it" : levelName(one, levels.length), note: noteOf(seen, one),
  }));
  const tray = (
    <Tray isDead={it.saying.isDead}>
      <MainAct isDisabled={typed.length === 0} onPress={() => { it.seeCones(typed); }}>{typed.length === 0 ? "None read yet" : `Keep ${String(typed.length)}`}</MainAct>
      <Act onPress={() => { it.open(NO_SHEET); }}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={load.number} when="cones" within="/kilns" isSeam={false} tray={tray}>
      <p class={css.said}>As the hand of a clock: upright is 12, down with its tip level with its base is 6. A spy hole is hot and bright: look through dark glass, and not long.</p>
      <Choice legend="On which shelf" name="level" options={options} chosen={level} onChoose={chooseLevel} />
      {ROLES.map(({ role, words }) => (
        <div key={role} class={css.shelf}>
          <Choice
            legend={`${words}${cones[role] ? `, ${cones[role]}` : ""}`} name={`${role}-hand`} options={HANDS} chosen={seen[`${level} ${role}`] ?? null}
            onChoose={(hand) => { see({ ...seen, [`${level} ${role}`]: hand }); }}
          />
        </div>
      ))}
      <details>
        <summary class={css.summary}>Other cones were set</summary>
        <div class={css.stack}>
          {ROLES.map(({ role, words }) => <ConePicker key={role} label={words} name={role} cone={cones[role]} onPick={(cone) => { pick({ ...cones, [role]: cone }); }} units={units} />)}
        </div>
      </details>
    </Screen>
  );
}

function noteOf(seen: Seen, level: number): string | undefined {
  const read = Object.keys(seen).filter((key) => key.startsWith(`${String(level)} `)).length;
  return read === 0 ? undefined : `${String(read)} read`;
}

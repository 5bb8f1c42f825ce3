/** On which shelf, and where each cone's hand points. */
import { Choice } from "../../ui/act";
import { useSession } from "../common/session";
import { ConePicker } from "./cone-picker";
import { HANDS } from "./cone-series";
import css from "./kilns.module.css";
import { levelName } from "./shelf-words";
import { ROLES } from "./use-cones-seen";
import type { ConesSeenNow } from "./use-cones-seen";

export function ConesSeen({ seen }: { seen: ConesSeenNow }) {
  const { units } = useSession().membership.member;
  const { levels, cones } = seen;
  const options = (levels.length > 0 ? levels : [0]).map((one) => {
    const read = seen.readOn(one);
    return { value: String(one), words: one === 0 ? "Anywhere in it" : levelName(one, levels.length), note: read === 0 ? undefined : `${String(read)} read` };
  });
  return (
    <>
      <p class={css.said}>As the hand of a clock: upright is 12, down with its tip level with its base is 6. A spy hole is hot and bright: look through dark glass, and not long.</p>
      <Choice legend="On which shelf" name="level" options={options} chosen={seen.level} onChoose={seen.chooseLevel} />
      {ROLES.map(({ role, words }) => (
        <div key={role} class={css.shelf}>
          <Choice
            legend={`${words}${cones[role] ? `, ${cones[role]}` : ""}`} name={`${role}-hand`} options={HANDS} chosen={seen.handOf(role)}
            onChoose={(hand) => { seen.see(role, hand); }}
          />
        </div>
      ))}
      <details>
        <summary class={css.summary}>Other cones were set</summary>
        <div class={css.stack}>
          {ROLES.map(({ role, words }) => <ConePicker key={role} label={words} name={role} cone={cones[role]} onPick={(cone) => { seen.pick(role, cone); }} units={units} />)}
        </div>
      </details>
    </>
  );
}

/** Ways to what has no place of its own in the bar. */
import { count } from "../../domain/format";
import { Act } from "../../ui/act";
import { Screen } from "../common/screen";
import { hasGrant, useSession } from "../common/session";
import { useKeptActs } from "../common/use-outbox";
import { useOpenClashes } from "../pieces/use-clash";
import { answersOf, stillDue } from "./due-view";
import css from "./studio.module.css";
import { useReminders } from "./use-due";

export function MoreScreen() {
  const acts = useKeptActs();
  const { shared, membership } = useSession();
  const notTaken = acts.filter((act) => act.state === "parked").length;
  const clashes = useOpenClashes().rows.length;
  const reminders = useReminders("due");
  const due = reminders.state === "ready" ? stillDue(reminders.value.results, answersOf(acts)).length : 0;
  return (
    <Screen title="More" isSeam={false}>
      {!isSecureContext && <p>No padlock: this phone opens Natch only with a signal. What you enter is kept all the same.</p>}
      <div class={css.stack}>
        <Act href="/find">Find</Act>
        <Act href="/due">{due > 0 ? `Due: ${String(due)} for you` : "Due"}</Act>
        <Act href="/air">Air of a room</Act>
        <Act href="/what-if">What if: drying</Act>
        <Act href="/moulds">Moulds</Act>
        <Act href="/glazes">Glaze batches and test reports</Act>
        <Act href="/clashes">{clashes > 0 ? `Two stories: ${count(clashes, "waits", "wait")}` : "Two stories"}</Act>
        <Act href="/not-taken">{notTaken > 0 ? `Not taken: ${String(notTaken)}` : "Not taken"}</Act>
        <Act href="/people">People</Act>
        {!shared && hasGrant(membership, "manage_settings") && <Act href="/backups">Backups</Act>}
        {!shared && <Act href="/me">Units, light, hand, text</Act>}
        <Act href="/person">Who holds this phone</Act>
        <Act onPress={() => { location.assign("/help/"); }}>Help</Act>
      </div>
    </Screen>
  );
}

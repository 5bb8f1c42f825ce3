import { useState } from "preact/hooks";
import { count } from "../../domain/format";
import { OfflineError, ProblemError } from "../../api/problem";
import { Act, Choice } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { useSession } from "../common/session";
import { useKeptActs } from "../common/use-outbox";
import css from "./studio.module.css";

/** Who holds this phone, in which of their studios, and handing it on. */
export function PersonScreen() {
  const { me, membership, enter, signOut, shared } = useSession();
  const waiting = useKeptActs().filter((act) => act.state === "waiting").length;
  const [wrong, setWrong] = useState<string | null>(null);
  const studios = me.memberships.map(({ studio }) => ({ value: studio.slug, words: studio.name }));
  const choose = async (slug: string): Promise<void> => {
    try {
      await enter(slug);
    } catch (error) {
      if (!(error instanceof OfflineError) && !(error instanceof ProblemError)) throw error;
      setWrong(error.message);
    }
  };
  return (
    <Screen title={membership.member.first_name} isSeam={false} tray={<Tray><Act onPress={() => void signOut()}>Hand this phone on</Act></Tray>}>
      <p>
        {shared ? "You are at work on this phone, which is everybody’s. Handing it on clears what you have read here." : "You hold this phone. Handing it on signs you out and clears what you have read here."}
        {waiting > 0 && (shared ? ` ${count(waiting, "act", "acts")} kept here will be sent under the name of who did them.` : ` ${count(waiting, "act", "acts")} kept here will be sent when you sign in again.`)}
      </p>
      <div class={css.stack}>
        <Act href="/due">What is due</Act>
        {!shared && <Act href="/me">Units, light, hand, text</Act>}
      </div>
      {studios.length > 1 && <Choice legend="Studio" name="studio" options={studios} chosen={membership.studio.slug} onChoose={(slug) => void choose(slug)} />}
      {wrong && <p role="alert">{wrong}</p>}
    </Screen>
  );
}

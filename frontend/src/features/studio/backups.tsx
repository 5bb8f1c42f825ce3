/** Which backups there are and whether they come back: an owner looks, and asks for one now. */
import type { BackupsRead } from "../../api/shapes-studio";
import { dayAndClock } from "../../domain/clock";
import { Act, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { studioPath, useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import css from "./studio.module.css";
import { rowWords, trialWords, useBackups } from "./use-backups";
import type { What } from "./use-backups";

const TITLE = "Backups";

export function BackupsScreen() {
  const { screen, claim, ask } = useBackups();
  const zone = useZone();
  const now = useNow();
  return (
    <WhenHeard title={TITLE} within="/more" screen={screen}>
      {(known, heardAt) => (
        <Screen title={TITLE} within="/more" heardAt={heardAt} isSeam={false} tray={<AskTray known={known} isAsking={claim.isAsking} ask={(what) => { void ask(what); }} />}>
          {claim.wrong && <p class={css.wrong} role="alert">{claim.wrong}</p>}
          {known.failure && <p class={css.wrong}>The last one failed. {known.failure.words}</p>}
          {known.is_old && <p class={css.wrong}>The newest is older than a day and a half. Is the machine on at night?</p>}
          {known.results.length === 0 && <p>There is no backup yet. One is made each night.</p>}
          <p>{trialWords(known.last_drill, now, zone)}</p>
          {known.last_drill && !known.last_drill.is_good && <p class={css.wrong}>{known.last_drill.words}</p>}
          {known.is_drill_old && <p class={css.wrong}>None came back whole for more than a month. Ask for a trial.</p>}
          {known.results.map((row) => (
            <div key={row.file} class={css.line}>
              <p>
                <b>{dayAndClock(new Date(row.made_at), now, zone)}</b>
                <br />
                <span class={css.note}>{rowWords(row, now, zone)}</span>
              </p>
            </div>
          ))}
          <TakeAlong />
        </Screen>
      )}
    </WhenHeard>
  );
}

/** Everything as tables and photos, for whoever wants to go on without Natch. */
function TakeAlong() {
  const { slug } = useSession().membership.studio;
  return (
    <section class={css.section} aria-label="Take everything along">
      <h2>Take everything along</h2>
      <p>All tables of the studio and its photos in one zip, clients’ names and prices too.</p>
      <Act onPress={() => { location.assign(studioPath(slug, "exports/")); }}>Tables and photos</Act>
    </section>
  );
}

function AskTray({ known, isAsking, ask }: { known: BackupsRead; isAsking: boolean; ask: (what: What) => void }) {
  const isAsked = (what: What): boolean => known.asked.includes(what);
  return (
    <Tray>
      <div class={css.two}>
        <Act isDisabled={isAsking || isAsked("drill") || known.results.length === 0} onPress={() => { ask("drill"); }}>{isAsked("drill") ? "Being tried" : "Try the newest"}</Act>
        <MainAct isDisabled={isAsking || isAsked("backup")} onPress={() => { ask("backup"); }}>{isAsked("backup") ? "Being made" : "Back up now"}</MainAct>
      </div>
    </Tray>
  );
}

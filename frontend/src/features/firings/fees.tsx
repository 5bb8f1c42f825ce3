/** What a load costs each maker: by the tariff, or its own cost shared by volume; who sets fees records it, once or anew. */
import { useState } from "preact/hooks";
import type { FeesAnswer, FeeShare } from "../../api/shapes-firings";
import { dayAndClock } from "../../domain/clock";
import { joinFacts, length } from "../../domain/format";
import { REASON_MOST } from "../../domain/limits";
import { Act, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Mark } from "../../ui/seam";
import { Standing } from "../../ui/standing";
import { Screen } from "../common/screen";
import { studioPath, useSession, useZone } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import { useDraft } from "../common/use-draft";
import { useNow } from "../common/use-now";
import { useScreen } from "../common/use-screen";
import { WhenHeard } from "../common/when-heard";
import { feesVerdict, minorOf, moneyWords, shareWords } from "./fee-words";
import css from "./kilns.module.css";
import { litresWords } from "./queue-words";

export function FeesScreen({ id = "" }: { id?: string }) {
  const screen = useScreen<FeesAnswer>(`loads/${id}/fees/`);
  const [isRecording, record] = useState(false);
  return (
    <WhenHeard title="Fees" within="/kilns" screen={screen}>
      {(fees, heardAt) => (isRecording
        ? <Record key={id} fees={fees} close={() => { record(false); screen.again(); }} />
        : <Ready fees={fees} heardAt={heardAt} record={() => { record(true); }} />)}
    </WhenHeard>
  );
}

function Ready({ fees, heardAt, record }: { fees: FeesAnswer; heardAt: Date | null; record: () => void }) {
  const { load, currency, shares, stage } = fees;
  const back = `/loads/${load.id}`;
  const tray = (
    <Tray>
      {fees.may_record && stage !== "nothing" ? <MainAct onPress={record}>Record…</MainAct> : <MainAct href={back}>{`Open ${load.number}`}</MainAct>}
      {fees.may_record && stage !== "nothing" && <Act href={back}>{load.number}</Act>}
    </Tray>
  );
  return (
    <Screen title={load.number} when="what it costs" within="/kilns" heardAt={heardAt} tray={tray}>
      <Standing drawing={<Mark mark={String(shares.length)} noun={shares.length === 1 ? "maker" : "makers"} />} natch={stage === "due" ? "hand" : stage === "estimate" ? "guess" : "done"} {...feesVerdict(fees)} />
      <Fact label="" note={fees.words} />
      {shares.map((share) => <Share key={share.person?.id ?? ""} share={share} currency={currency} />)}
      {shares.length === 0 && <Fact label="" natch="done" value="Nothing of yours is in it." />}
      <Recorded fees={fees} />
    </Screen>
  );
}

function Share({ share, currency }: { share: FeeShare; currency: string }) {
  const { units } = useSession().membership.member;
  const { verdict, evidence } = shareWords(share, currency);
  return (
    <Block name={share.person?.first_name ?? "Nobody’s"}>
      <li><Fact label="all" value={verdict} note={evidence} /></li>
      {share.lines.map(({ placement_id, mark, count, box, litres, which, is_charged, minor }) => (
        <li key={placement_id}>
          <Fact
            label={count > 1 ? `${mark} × ${String(count)}` : mark} value={!is_charged ? "Not charged, as not fired" : minor === null ? litresWords(litres) : moneyWords(minor, currency)}
            note={joinFacts(which, box && `${length(box.x_mm, units)} by ${length(box.y_mm, units)} by ${length(box.height_mm, units)}`, is_charged && minor !== null && litresWords(litres))}
          />
        </li>
      ))}
    </Block>
  );
}

function Recorded({ fees: { recorded, currency } }: { fees: FeesAnswer }) {
  const zone = useZone();
  const now = useNow();
  if (recorded === null) return null;
  return (
    <Block name="As it was recorded" note={joinFacts(recorded.member.first_name, dayAndClock(new Date(recorded.happened_at), now, zone))}>
      {recorded.words && <li><Fact label="words" note={recorded.words} /></li>}
      {recorded.shares.map(({ person, litres, said_l, why, minor }) => (
        <li key={person?.id ?? ""}>
          <Fact label={person?.first_name ?? "nobody’s"} value={minor === null ? "No price" : moneyWords(minor, currency)} note={joinFacts(said_l === null ? litresWords(litres) : `${litresWords(said_l)} as said, ${litresWords(litres)} as reckoned`, why)} />
        </li>
      ))}
    </Block>
  );
}

interface FeesTyped {
  cost: string;
  words: string;
  litres: Record<string, { litres: string; why: string }>;
}

function Record({ fees: { load, currency, shares, cost_minor, per_litre_minor, journal_seq }, close }: { fees: FeesAnswer; close: () => void }) {
  const { membership } = useSession();
  const { draft, change, clear } = useDraft<FeesTyped>(`fees ${load.id}`, () => ({ cost: "", words: "", litres: {} }));
  const { claim, isAsking, wrong, wrongAt } = useClaim();
  const [isTried, setTried] = useState(false);
  const cost = minorOf(draft.cost, currency);
  const noCost = draft.cost.trim() !== "" && cost === null ? "That is no sum of money." : null;
  const named = shares.filter(({ person }) => person !== null);
  const said = named.flatMap(({ person }) => {
    const typed = person === null ? undefined : draft.litres[person.id];
    return person === null || !typed?.litres.trim() ? [] : [{ member_id: person.id, litres: Number(typed.litres.replace(",", ".")), why: typed.why.trim() }];
  });
  const send = async (): Promise<void> => {
    setTried(true);
    if (noCost) return;
    const body = { ...envelope(), based_on: journal_seq, cost_minor: cost, litres: said, words: draft.words.trim() };
    if ((await claim({ method: "POST", path: studioPath(membership.studio.slug, `loads/${load.id}/fees/`), body })) === null) return;
    clear();
    close();
  };
  const set = (id: string, part: Partial<{ litres: string; why: string }>): void => { change({ litres: { ...draft.litres, [id]: { litres: "", why: "", ...draft.litres[id], ...part } } }); };
  const tray = (
    <Tray>
      <MainAct isDisabled={isAsking} onPress={() => void send()}>{isAsking ? "Asking" : "Record it"}</MainAct>
      <Act onPress={close}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={load.number} when="record fees" within="/kilns" isSeam={false} tray={tray}>
      {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
      <Field label={`What the firing cost, ${currency}${per_litre_minor === null ? "" : `; empty: ${moneyWords(per_litre_minor, currency)} a litre`}`} name="cost_minor" inputMode="decimal" value={draft.cost} onType={(value) => { change({ cost: value }); }} wrong={wrongAt("#/cost_minor") ?? (isTried ? noCost : null)} />
      {cost_minor !== null && <p class={css.said}>{`Last time ${moneyWords(cost_minor, currency)} was shared by volume.`}</p>}
      {named.map(({ person, litres }) => person && (
        <fieldset key={person.id} class={css.part}>
          <legend>{`${person.first_name}: ${litresWords(litres)} as reckoned`}</legend>
          <div class={css.two}>
            <Field label="Litres as measured, if other" name={`litres-${person.id}`} inputMode="decimal" value={draft.litres[person.id]?.litres ?? ""} onType={(value) => { set(person.id, { litres: value }); }} wrong={wrongAt(`#/litres/${String(said.findIndex(({ member_id }) => member_id === person.id))}/litres`)} />
            <Field label="Why" name={`why-${person.id}`} most={REASON_MOST} value={draft.litres[person.id]?.why ?? ""} onType={(why) => { set(person.id, { why }); }} />
          </div>
        </fieldset>
      ))}
      <Field label="A word to it" name="words" most={REASON_MOST} value={draft.words} onType={(words) => { change({ words }); }} wrong={wrongAt("#/words")} />
      <p class={css.said}>What is recorded stays in the book; recorded anew, the last counts.</p>
    </Screen>
  );
}

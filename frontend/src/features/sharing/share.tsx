/** What the client of an order is asked, and by which links they see it. Nothing here is sent: a person sends it. */
import { useState } from "preact/hooks";
import type { Approval, OrderAnswer, OrderLink } from "../../api/shapes-orders";
import { Act, MainAct, SmallAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact } from "../../ui/seam";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { noonOf } from "../../domain/wall";
import { ShareSheetScreen } from "./share-sheets";
import { approvalWords, linkWords } from "./share-words";
import css from "./share.module.css";
import { useMayShare, useShare, useShareScreen } from "./use-share";
import type { Share } from "./use-share";

export function ShareScreen({ id = "" }: { id?: string }) {
  const screen = useShareScreen(id);
  return <WhenHeard title="Share" within="/orders" screen={screen}>{(order, heardAt) => <Ready key={id} order={order} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ order, heardAt }: { order: OrderAnswer; heardAt: Date | null }) {
  const share = useShare(order);
  const mayShare = useMayShare(order.commission);
  const { number, state } = order.commission;
  if (share.sheet.kind !== "none") return <ShareSheetScreen share={share} order={order} />;
  const tray = mayShare && (
    <Tray isDead={share.saying.isDead}>
      <MainAct onPress={() => { share.open({ kind: "choose" }); }} wide={`New link to ${number}`}>New link…</MainAct>
      {state === "open" && <Act spoken={`Ask the client of ${number}`} onPress={() => { share.open({ kind: "ask" }); }}>Ask…</Act>}
    </Tray>
  );
  return (
    <Screen title={`${number} share`} when={order.commission.client_name} within="/orders" heardAt={heardAt} tray={tray}>
      <SaidLine mark={number} saying={share.saying} />
      <Block name="To approve" note={share.approvals.length === 0 ? "The client was asked nothing yet." : undefined}>
        {share.approvals.map((approval) => <li key={approval.id}><Asked approval={approval} share={share} mayShare={mayShare} /></li>)}
      </Block>
      {mayShare && <Links share={share} />}
    </Screen>
  );
}

function Asked({ approval, share, mayShare }: { approval: Approval; share: Share; mayShare: boolean }) {
  const now = useNow();
  const zone = useZone();
  const { label, natch, verdict, evidence } = approvalWords(approval, noonOf(approval.due_date, zone), now, zone);
  return (
    <Fact label={label} natch={natch} value={verdict} note={evidence}>
      {approval.question !== "" && <p>{approval.question}</p>}
      {approval.clay_words !== "" && <p class={css.note}>{approval.clay_words}</p>}
      {mayShare && approval.answer === null && <Act spoken={`${verdict}: write down what the client said`} onPress={() => { share.open({ kind: "said", approval }); }}>They said…</Act>}
    </Fact>
  );
}

function Links({ share }: { share: Share }) {
  const { links, claim } = share;
  const live = links?.results.filter((link) => link.state === "live").length;
  return (
    <Block name="Links" count={live} note={links === null ? "Links are asked for with a signal." : "A mail program may open a link by itself."}>
      {links?.results.map((link) => <li key={link.id}><Link link={link} share={share} /></li>)}
      {claim.wrong && <li><Fact label="" natch="refused" value={claim.wrong} /></li>}
    </Block>
  );
}

function Link({ link, share }: { link: OrderLink; share: Share }) {
  const now = useNow();
  const zone = useZone();
  const [isAsked, ask] = useState(false);
  const { natch, verdict, evidence } = linkWords(link, now, zone);
  return (
    <Fact label="link" natch={natch} value={verdict} note={evidence}>
      {link.state === "live" && (isAsked
        ? <SmallAct spoken={`${verdict}: revoke it for good`} onPress={() => { ask(false); void share.revoke(link.id); }}>For good</SmallAct>
        : <SmallAct spoken={`${verdict}: revoke it`} onPress={() => { ask(true); }}>Revoke</SmallAct>)}
    </Fact>
  );
}

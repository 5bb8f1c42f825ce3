/** What is asked in place of the screen of shares: what to show, its preview, the link made, a question, what was answered. */
import { useState } from "preact/hooks";
import type { Approval, LinkMade, LinkWanted, OrderAnswer } from "../../api/shapes-orders";
import { date } from "../../domain/clock";
import { Act, Choice, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Toggles } from "../../ui/toggles";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { noonOf } from "../../domain/wall";
import { ABOUT, ANSWERS, FIRST_CHOSEN, isWhole, ITEMS, KINDS, PEOPLE, WAITS, wanted } from "./share-words";
import css from "./share.module.css";
import type { Share } from "./use-share";
import type { ComponentChildren } from "preact";

interface SheetProps {
  share: Share;
  order: OrderAnswer;
}

export function ShareSheetScreen({ share, order }: SheetProps) {
  const { sheet } = share;
  const { number } = order.commission;
  switch (sheet.kind) {
    case "choose":
      return <ChooseSheet share={share} order={order} />;
    case "preview":
      return <PreviewSheet share={share} number={number} link={sheet.link} html={sheet.html} />;
    case "made":
      return <MadeSheet share={share} number={number} made={sheet.made} />;
    case "ask":
      return <AskSheet share={share} number={number} />;
    case "said":
      return <SaidSheet share={share} number={number} approval={sheet.approval} />;
    case "none":
      return null;
  }
}

function Sheet({ number, title, main, share, children }: { number: string; title: string; main?: ComponentChildren; share: Share; children: ComponentChildren }) {
  const tray = <Tray>{main}<Act onPress={() => { share.open({ kind: "none" }); }}>Not now</Act></Tray>;
  return <Screen title={number} when={title} within="/orders" isSeam={false} tray={tray}><div class={css.stack}>{children}</div></Screen>;
}

function ChooseSheet({ share, order }: SheetProps) {
  const { commission } = order;
  const [kind, setKind] = useState<LinkWanted["kind"]>(commission.state === "open" ? "client" : "visitor");
  const [shows, setShows] = useState<ReadonlySet<string>>(new Set(FIRST_CHOSEN));
  const [photos, setPhotos] = useState<ReadonlySet<string>>(new Set());
  const [people, setPeople] = useState<LinkWanted["people"]>("initials");
  const [until, setUntil] = useState("");
  const link = wanted({ kind, shows, photos, people, until });
  const { claim, links } = share;
  const wrong = claim.wrongAt("#/shows") ?? claim.wrong;
  return (
    <Sheet number={commission.number} title="new link" share={share} main={<MainAct isDisabled={claim.isAsking || !isWhole(link)} onPress={() => void share.preview(link)}>Preview</MainAct>}>
      <Choice legend="For whom" name="kind" options={KINDS} chosen={kind} onChoose={setKind} />
      {kind === "client" && (
        <>
          <Toggles legend="What they see" options={ITEMS} chosen={shows} onToggle={(value) => { setShows(toggled(shows, value)); }} />
          {links && links.photos.length > 0 && <Photos share={share} chosen={photos} onToggle={(id) => { setPhotos(toggled(photos, id)); }} />}
          <Choice legend="People here" name="people" options={PEOPLE} chosen={people} onChoose={setPeople} />
        </>
      )}
      {kind === "visitor" && <p>A visitor reads the history of {commission.number} as it was kept last, and what was told after that. Where none was kept, it is kept now.</p>}
      <Field label="Opens until the end of" type="date" name="expires_on" value={until} onType={setUntil} wrong={claim.wrongAt("#/expires_on")} />
      {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
      <p class={css.note}>For display only is always told. Prices, notes, other clients and how to reach people never are.</p>
    </Sheet>
  );
}

function toggled(chosen: ReadonlySet<string>, value: string): ReadonlySet<string> {
  const next = new Set(chosen);
  if (!next.delete(value)) next.add(value);
  return next;
}

function Photos({ share, chosen, onToggle }: { share: Share; chosen: ReadonlySet<string>; onToggle: (id: string) => void }) {
  const now = useNow();
  const zone = useZone();
  return (
    <fieldset class={css.photos}>
      <legend>Photos</legend>
      {share.links?.photos.map(({ id, happened_at: at }) => (
        <label key={id} class={css.photo}>
          <input type="checkbox" checked={chosen.has(id)} onChange={() => { onToggle(id); }} />
          <img src={share.thumbnail(id)} alt="" />
          <span>{date(new Date(at), now, zone)}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** The page as the server draws it; nothing in it runs and nothing in it is sent. */
function PreviewSheet({ share, number, link, html }: { share: Share; number: string; link: LinkWanted; html: string }) {
  const { claim } = share;
  return (
    <Sheet number={number} title="preview" share={share} main={<MainAct isDisabled={claim.isAsking} onPress={() => void share.make(link)}>Make the link</MainAct>}>
      <p>This is all they will see.</p>
      <iframe class={css.page} title={`${number} as its client sees it`} srcdoc={html} sandbox="allow-same-origin" />
      {claim.wrong && <p class={css.wrong} role="alert">{claim.wrong}</p>}
    </Sheet>
  );
}

function MadeSheet({ share, number, made }: { share: Share; number: string; made: LinkMade }) {
  const [isCopied, setCopied] = useState(false);
  const copy = async (): Promise<void> => {
    // There is no clipboard without a padlock; then the text is chosen by hand.
    await navigator.clipboard.writeText(made.message).then(() => { setCopied(true); }, () => { setCopied(false); });
  };
  const tray = (
    <Tray>
      <MainAct onPress={() => void copy()} isDisabled={!("clipboard" in navigator)}>{isCopied ? "Copied" : "Copy the text"}</MainAct>
      <Act onPress={() => { share.open({ kind: "none" }); }}>Done</Act>
    </Tray>
  );
  return (
    <Screen title={number} when="link made" within="/orders" isSeam={false} tray={tray}>
      <div class={css.stack}>
        <p>Copy it now: the address is shown this once, and is kept nowhere. Nothing was sent.</p>
        <textarea class={css.text} aria-label="Text to send" rows={6} readOnly value={made.message} />
        <p class={css.note}>Whoever has the link sees the page. If it went astray, revoke it and make another one.</p>
      </div>
    </Screen>
  );
}

function AskSheet({ share, number }: { share: Share; number: string }) {
  const { refused: { act, wrongAt, wrong } } = share;
  const now = useNow();
  const zone = useZone();
  const typed = (name: string): string => { const value = act?.body[name]; return typeof value === "string" ? value : ""; };
  const [about, setAbout] = useState<Approval["about"]>("colour");
  const [waits, setWaits] = useState<Approval["waits"]>("glazing");
  const [due, setDue] = useState(typed("due_date"));
  const [question, setQuestion] = useState(typed("question"));
  const day = noonOf(due, zone);
  const isWholeNow = day !== null && (about !== "other" || question.trim() !== "");
  const what = ABOUT.find(({ value }) => value === about)?.words ?? "";
  const words = `Asked: ${what.toLowerCase()}, by ${day ? date(day, now, zone) : ""}`;
  return (
    <Sheet number={number} title="ask the client" share={share} main={<MainAct isDisabled={!isWholeNow} onPress={() => { share.ask({ about, waits, due_date: due, question }, words); }}>Ask</MainAct>}>
      <Choice legend="What to approve" name="about" options={ABOUT} chosen={about} onChoose={setAbout} />
      <Choice legend="What waits for it" name="waits" options={WAITS} chosen={waits} onChoose={setWaits} />
      <Field label="By when" type="date" name="due_date" value={due} onType={setDue} wrong={wrongAt("#/due_date")} />
      <Field label="The question, as the client reads it" name="question" most={300} value={question} onType={setQuestion} wrong={wrongAt("#/question") ?? wrong} />
      <p class={css.note}>It stands on the client&rsquo;s page. You are reminded two days before and on the day, with a text to send; the client is told by you.</p>
    </Sheet>
  );
}

function SaidSheet({ share, number, approval }: { share: Share; number: string; approval: Approval }) {
  const [answer, choose] = useState<(typeof ANSWERS)[number]["value"] | null>(null);
  const words = answer === null ? "" : `${approval.title}: ${(ANSWERS.find(({ value }) => value === answer)?.words ?? "").toLowerCase()}`;
  return (
    <Sheet number={number} title="what the client said" share={share} main={<MainAct isDisabled={answer === null} onPress={() => { if (answer !== null) share.record(approval, answer, words); }}>Write it down</MainAct>}>
      <p>{approval.title}. {approval.question}</p>
      <Choice legend="The client said" name="answer" options={ANSWERS} chosen={answer} onChoose={choose} />
      {approval.message !== "" && <><p class={css.note}>To remind them, if you will:</p><textarea class={css.text} aria-label="Text to send" rows={5} readOnly value={approval.message} /></>}
    </Sheet>
  );
}

/** The firing ticket of a piece: which cone it waits for, and what whoever loads the kiln is to mind. Fired ware with one waits to be fired again. */
import { useLocation } from "preact-iso";
import { useState } from "preact/hooks";
import type { TicketRow } from "../../api/shapes-firings";
import type { Page } from "../../api/pages";
import type { PieceAnswer } from "../../api/shapes-pieces";
import { dayAndClock } from "../../domain/clock";
import { joinFacts } from "../../domain/format";
import { REASON_MOST } from "../../domain/limits";
import { Act, Choice, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Toggles } from "../../ui/toggles";
import { Screen } from "../common/screen";
import { hasGrant, useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { useAct } from "../common/use-outbox";
import { useRefused } from "../common/use-refused";
import { useScreen } from "../common/use-screen";
import { WhenHeard } from "../common/when-heard";
import css from "./kilns.module.css";
import { ticketAct } from "./load-acts";
import { PutFirst } from "./put-first";
import { FAULTS, faultOf, firedWords, MENDED, mendedOf, toggled, wasFired } from "./ticket-words";
import type { Fault, Mended } from "./ticket-words";

const KINDS = [{ value: "bisque", words: "Bisque" }, { value: "glaze", words: "Glaze" }] as const;
/** What has been through a bisque is glazed next, whatever is said of it now. */
const FIRED: ReadonlySet<string> = new Set(["bisqued", "glazed", "glaze_fired", "checked", "packed"]);

export function TicketScreen({ id = "" }: { id?: string }) {
  const screen = useScreen<PieceAnswer>(`pieces/${id}/`);
  return <WhenHeard title="Ticket" within="/kilns" screen={screen}>{(piece) => <Ready key={id} answer={piece} />}</WhenHeard>;
}

function Ready({ answer }: { answer: PieceAnswer }) {
  const { piece, journal_seq } = answer;
  const { membership } = useSession();
  const { route } = useLocation();
  const act = useAct();
  const refused = useRefused("asked_for_cone", piece.id);
  const kept = refused.act?.body;
  const asText = (value: unknown): string => (typeof value === "string" ? value : "");
  const [kind, choose] = useState<"bisque" | "glaze">(kept ? (kept["kind"] === "glaze" ? "glaze" : "bisque") : FIRED.has(piece.state) ? "glaze" : "bisque");
  const [cone, typeCone] = useState(asText(kept?.["cone"]));
  const [words, typeWords] = useState(asText(kept?.["words"]));
  const [fault, chooseFault] = useState<Fault | null>(faultOf(kept?.["fault"]));
  const [mended, mend] = useState<ReadonlySet<Mended>>(mendedOf(kept?.["mended"]));
  const isAgain = kind === "glaze" && wasFired(answer);
  const isOurs = piece.maker?.id === membership.member.id || hasGrant(membership, "build_loads");
  const send = async (): Promise<void> => {
    refused.letGo();
    await act(ticketAct(piece, { kind, cone, words, ...(isAgain ? { fault, mended: [...mended] } : {}) }, journal_seq));
    route(`/pieces/${piece.id}`);
  };
  const tray = (
    <Tray>
      <MainAct isDisabled={cone.trim() === ""} onPress={() => void send()}>{`Ticket for ${piece.mark}`}</MainAct>
      <Act href={`/pieces/${piece.id}`}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={piece.mark} when="firing ticket" within="/kilns" isSeam={false} tray={tray}>
      {!isOurs && <p>{`${piece.maker?.first_name ?? "Its maker"}, or who builds loads, says which cone it waits for.`}</p>}
      {refused.wrong && <p class={css.wrong} role="alert">{refused.wrong}</p>}
      <Choice legend="It waits for" name="kind" options={KINDS} chosen={kind} onChoose={choose} />
      <Field label="Cone, as on its foot: 04 and 4 are two cones" name="cone" most={12} value={cone} onType={typeCone} wrong={refused.wrongAt("#/cone")} />
      {isAgain && (
        <>
          <p class={css.said}>{`Fired before: ${firedWords(answer)}. A second glaze firing can blister or craze more, and it gets at least 3 mm over it. Choose its cone on purpose.`}</p>
          <Choice legend="What was wrong with it" name="fault" options={FAULTS} chosen={fault} onChoose={chooseFault} />
          <Toggles legend="What was mended since" options={MENDED} chosen={mended} onToggle={(code) => { mend(toggled(mended, code)); }} />
        </>
      )}
      <Field label="What to mind, if anything" name="words" most={REASON_MOST} value={words} onType={typeWords} wrong={refused.wrongAt("#/words")} />
      <p class={css.said}>It goes only on loads of that cone. Fired ware with a ticket waits to be fired again; the story keeps each firing.</p>
      <PutFirst answer={answer} kind={kind} onSaid={() => { route(`/pieces/${piece.id}`); }} />
      <Earlier pieceId={piece.id} />
    </Screen>
  );
}

function Earlier({ pieceId }: { pieceId: string }) {
  const zone = useZone();
  const now = useNow();
  const screen = useScreen<Page<TicketRow>>(`pieces/${pieceId}/firing-tickets/`);
  if (screen.state !== "ready" || screen.value.results.length === 0) return null;
  return (
    <section class={css.section} aria-label="Asked before">
      <h2>Asked before</h2>
      {screen.value.results.map(({ id, kind, cone, words, why, happened_at }) => <p key={id}><b>{`${kind}, cone ${cone}`}</b>{(why || words) && `: ${joinFacts(why, words)}`} <span class={css.said}>{dayAndClock(new Date(happened_at), now, zone)}</span></p>)}
    </section>
  );
}

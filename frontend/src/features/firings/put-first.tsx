/** Who settles loads may set the rule of the queue aside for a piece, with a reason that all can read. */
import { useState } from "preact/hooks";
import type { PieceAnswer } from "../../api/shapes-pieces";
import { REASON_MOST } from "../../domain/limits";
import { Act, Field } from "../../ui/act";
import { hasGrant, useSession } from "../common/session";
import { useAct } from "../common/use-outbox";
import { useRefused } from "../common/use-refused";
import css from "./kilns.module.css";
import { turnAct } from "./load-acts";

export function PutFirst({ answer: { piece, journal_seq }, kind, onSaid }: { answer: PieceAnswer; kind: "bisque" | "glaze"; onSaid: () => void }) {
  const { membership } = useSession();
  const act = useAct();
  const refused = useRefused("put_first", piece.id);
  const kept = refused.act?.body["reason"];
  const [reason, typeReason] = useState(typeof kept === "string" ? kept : "");
  if (!hasGrant(membership, "settle_loads")) return null;
  const send = async (): Promise<void> => {
    refused.letGo();
    await act(turnAct(piece, kind, reason, journal_seq));
    onSaid();
  };
  return (
    <section class={css.section} aria-label="Put it first">
      <h2>Put it first</h2>
      <p class={css.said}>The rule of the queue is set aside for it until it is fired. Whoever waits behind it reads who did, and why.</p>
      {refused.wrong && <p class={css.wrong} role="alert">{refused.wrong}</p>}
      <Field label="Why it goes first" name="turn" most={REASON_MOST} value={reason} onType={typeReason} wrong={refused.wrongAt("#/reason")} />
      <Act isDisabled={reason.trim() === ""} onPress={() => void send()}>{`${piece.mark} first for ${kind}`}</Act>
    </section>
  );
}

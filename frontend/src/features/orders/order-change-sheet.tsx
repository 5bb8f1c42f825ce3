/** The client's short name, what is wanted, its use, a note: asked of the studio at once, as somebody else may have written there too. */
import { useState } from "preact/hooks";
import type { OrderAnswer } from "../../api/shapes-orders";
import { Choice, Field, MainAct } from "../../ui/act";
import { studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import { useDraft } from "../common/use-draft";
import { changedFields, missingWords, wordsOfOrder } from "./order-change";
import { USES } from "./order-words";
import css from "./order.module.css";
import { SheetFrame } from "./sheet-frame";
import type { Order } from "./use-order";

const USE_OPTIONS = [{ value: "food", words: USES.food.words }, { value: "display", words: USES.display.words }] as const;

export function ChangeWordsSheet({ order }: { order: Order }) {
  const { membership: { studio } } = useSession();
  const { commission, journal_seq: seq } = order.view.answer;
  const before = wordsOfOrder(commission);
  const { draft, change, clear } = useDraft(`order:${commission.id}`, () => before);
  const [isTried, tryIt] = useState(false);
  const { claim, isAsking, wrong, wrongAt } = useClaim();
  const faults = missingWords(draft);
  const fields = changedFields(before, draft);
  const at = (pointer: string): string | null => wrongAt(pointer) ?? (isTried ? faults.get(pointer) ?? null : null);

  const send = async (): Promise<void> => {
    tryIt(true);
    if (faults.size > 0) return;
    const answer = await claim<OrderAnswer>({
      method: "PATCH", path: studioPath(studio.slug, `commissions/${commission.id}/`), body: { ...envelope(), based_on: seq, ...fields },
      headers: { "If-Match": `"${String(commission.revision)}"` },
    });
    // Not taken: what somebody else wrote meanwhile is read, and what was typed here stays.
    order.again();
    if (answer === null) return;
    clear();
    order.open("none");
  };
  return (
    <SheetFrame
      order={order}
      main={<MainAct isDisabled={isAsking || Object.keys(fields).length === 0} onPress={() => void send()}>{isAsking ? "Asking" : "Keep"}</MainAct>}
    >
      {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
      <Field label="Client, as the studio calls them" name="client_name" most={120} value={draft.client} onType={(client) => { change({ client }); }} wrong={at("#/client_name")} autocomplete="off" />
      {draft.contact !== null && (
        <Field
          label="How to reach the client: only you and the owner see it" name="client_contact" most={300} value={draft.contact}
          onType={(contact) => { change({ contact }); }} wrong={at("#/client_contact")} autocomplete="off"
        />
      )}
      <Field label="What, in a few words" name="what" most={200} value={draft.what} onType={(what) => { change({ what }); }} wrong={at("#/what")} />
      {before.use === "display" && !commission.may.lift_display
        ? <p>{USES.display.words}: {USES.display.note}.</p>
        : <Choice legend="It is for" name="use" options={USE_OPTIONS} chosen={draft.use} onChoose={(use) => { change({ use }); }} />}
      {at("#/use") && <p class={css.wrong} role="alert">{at("#/use")}</p>}
      <Field label="A note, for those who read the story" name="note" most={4000} value={draft.note} onType={(note) => { change({ note }); }} wrong={at("#/note")} />
    </SheetFrame>
  );
}

/** A new order: for whom, what, for what use, by when, and so many sets of what. What was typed stays until it is kept. */
import { THING_MOST } from "../../domain/limits";
import { Act, Choice, Count, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Select } from "../../ui/select";
import { Screen } from "../common/screen";
import type { DraftLine } from "./new-order-draft";
import { USES } from "./order-words";
import css from "./order.module.css";
import { useNewOrder } from "./use-new-order";
import type { NewOrder } from "./use-new-order";

const USE_OPTIONS = [{ value: "food", words: USES.food.words }, { value: "display", words: USES.display.words }] as const;

export function NewOrderScreen() {
  const order = useNewOrder();
  const { draft, change, wrongAt, wrong } = order;
  const tray = <Tray><MainAct onPress={order.keep} wide="Take order">Take the order</MainAct></Tray>;
  return (
    <Screen title="New order" within="/orders" isSeam={false} tray={tray}>
      {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
      <Field label="Client, as the studio calls them" name="client_name" most={120} value={draft.client} onType={(client) => { change({ client }); }} wrong={wrongAt("#/client_name")} autocomplete="off" />
      <Field label="What, in a few words" name="what" most={200} value={draft.what} onType={(what) => { change({ what }); }} wrong={wrongAt("#/what")} />
      <div>
        <Choice legend="It is for" name="use" options={USE_OPTIONS} chosen={draft.use} onChoose={(use) => { change({ use }); }} />
        {draft.use && <p>{USES[draft.use].note}</p>}
        {wrongAt("#/use") && <p class={css.wrong} role="alert">{wrongAt("#/use")}</p>}
      </div>
      <Field label="Promised for, if a day was promised" type="date" name="promised_date" value={draft.promised} onType={(promised) => { change({ promised }); }} wrong={wrongAt("#/promised_date")} />
      {draft.lines.map((line, place) => <LineForm key={line.id} line={line} place={place} order={order} />)}
      <Act onPress={order.addLine}>One more line…</Act>
      <Field
        label="How to reach the client: only you and the owner see it" name="client_contact" most={300} value={draft.contact}
        onType={(contact) => { change({ contact }); }} wrong={wrongAt("#/client_contact")} autocomplete="off"
      />
      <Field label="Number, if it has one already; else the studio gives the next" name="number" value={draft.number} onType={(number) => { change({ number }); }} wrong={wrongAt("#/number")} />
      <div class={css.far}><Act onPress={order.letGo}>Let what was typed go</Act></div>
    </Screen>
  );
}

/** So many sets of one thing. The server names a fault by the line's place among those sent, which are those written in. */
function LineForm({ line, place, order }: { line: DraftLine; place: number; order: NewOrder }) {
  const { draft, designs, wrongAt } = order;
  const at = (field: string): string | null => wrongAt(`#/lines/${String(place)}/${field}`);
  const set = (part: Partial<DraftLine>): void => { order.changeLine(line.id, part); };
  const roles = line.roles.length > 0 ? line.roles : [{ designId: "", role: "", count: 1 }];
  const options = designs.map((design) => ({ value: design.id, words: design.name }));
  const choose = (index: number, designId: string): void => {
    const design = designs.find((one) => one.id === designId);
    const next = roles.map((role, here) => (here === index ? { ...role, designId, role: design?.noun ?? "" } : role));
    set({ roles: next.filter((role) => role.designId !== "") });
  };
  return (
    <fieldset class={css.line}>
      <legend>{draft.lines.length > 1 ? `Line ${String(place + 1)}` : "Wanted"}</legend>
      <Field label="What these are" name={`line-${String(place)}`} most={THING_MOST} value={line.what} onType={(what) => { set({ what }); }} wrong={at("what")} />
      <Count label={roles.length > 1 || (roles[0]?.count ?? 1) > 1 ? "How many sets" : "How many"} figure={line.wanted} least={1} onCount={(wanted) => { set({ wanted }); }} />
      {roles.map((role, index) => (
        <div key={`${line.id}${String(index)}`} class={css.role}>
          <Select
            label={index === 0 ? "One set is made of" : "and of"} name={`design-${String(place)}-${String(index)}`} options={options} chosen={role.designId} none={designs.length > 0 ? "any piece" : "no designs heard of yet"}
            onChoose={(id) => { choose(index, id); }} wrong={at(`recipe/${String(index)}/design_id`) ?? at(`recipe/${String(index)}/role`)}
          />
          {role.designId !== "" && (
            <Count label="In one set" figure={role.count} least={1} most={12} onCount={(count) => { set({ roles: roles.map((one, here) => (here === index ? { ...one, count } : one)) }); }} />
          )}
        </div>
      ))}
      {line.roles.length > 0 && line.roles.length < 6 && <Act onPress={() => { set({ roles: [...line.roles, { designId: "", role: "", count: 1 }] }); }}>And a piece to go with it…</Act>}
      {draft.lines.length > 1 && <Act spoken={`Take line ${String(place + 1)} out`} onPress={() => { order.dropLine(line.id); }}>Take this line out</Act>}
    </fieldset>
  );
}

/** Cast again, in place of the screen: from the master, or from a fired piece, which is another mould. */
import { useState } from "preact/hooks";
import { asTyped } from "../../domain/typed";
import { Choice, Field, MainAct } from "../../ui/act";
import { useSession } from "../common/session";
import { CrumbCheckLine } from "./crumbs";
import css from "./mould.module.css";
import type { MouldNow } from "./use-mould";
import type { MouldScreenState } from "./use-mould-screen";

type MadeFrom = "master" | "fired_piece";

export function PourSheet({ mould: { set }, screen }: { mould: MouldNow; screen: MouldScreenState }) {
  const { units } = useSession().membership.member;
  const { pourRefused } = screen;
  const refused = pourRefused.act?.body;
  const [from, choose] = useState<MadeFrom>(refused?.["made_from"] === "fired_piece" ? "fired_piece" : "master");
  const [fired, type] = useState(asTyped(refused?.["fired_mm"], units.length));
  const { casting, label, makes } = set;
  if (casting === null) return null;
  const options = [
    { value: "master", words: casting.master.label, note: "the master: the same size again" },
    { value: "fired_piece", words: `A fired ${makes.role}`, note: "the master is lost" },
  ] as const;
  const isFired = from === "fired_piece";
  return (
    <form class={css.stack} onSubmit={(event) => { event.preventDefault(); if (!isFired || fired.trim() !== "") screen.pour(from, fired); }}>
      {pourRefused.wrong && <p role="alert"><b>{pourRefused.wrong}</b></p>}
      <Choice legend="Made from" name="made_from" options={options} chosen={from} onChoose={choose} />
      {isFired
        ? (
          <>
            <Field label={`A length of it as fired, ${units.length}`} name="fired_mm" value={fired} onType={type} inputMode={units.length === "mm" ? "decimal" : "text"} wrong={pourRefused.wrongAt("#/fired_mm")} />
            <p>Clay shrinks once more: what comes out would be smaller, and is not the same mould. The studio answers how large a model to make first.</p>
          </>
        )
        : (
          <>
            <p>Generation {casting.generation} of {label} is laid aside; the next counts from nought. Its first presses may stick.</p>
            <CrumbCheckLine found={screen.crumbs} />
          </>
        )}
      <MainAct type="submit" isDisabled={isFired && fired.trim() === ""}>{isFired ? "How large a model?" : `Poured anew from ${casting.master.label}`}</MainAct>
    </form>
  );
}

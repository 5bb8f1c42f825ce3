/** One thing on an open load: on which shelf it goes, or off the load. */
import { useState } from "preact/hooks";
import { joinFacts, length } from "../../domain/format";
import { Act, Choice, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Screen } from "../common/screen";
import { studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";
import css from "./kilns.module.css";
import type { Shown } from "./load";
import { levelOf } from "./load-overlay";
import { placementMark, placementWords } from "./load-words";
import { levelName } from "./shelf-words";
import { NO_SHEET } from "./use-load";

export function PlacementSheet({ it, fit, around: { units }, id, again }: Shown & { id: string; again: () => void }) {
  const { membership } = useSession();
  const { load } = it;
  const row = load.placements.find((one) => one.id === id);
  const levels = fit?.levels ?? [];
  const here = row ? levelOf(row, levels) : null;
  const [level, choose] = useState(String(row?.level ?? 0));
  const { claim, isAsking, wrong } = useClaim();
  if (row === undefined) return <Screen title={load.number} when="off" within="/kilns" isSeam={false} tray={<Tray><MainAct onPress={() => { it.open(NO_SHEET); }}>Back to the load</MainAct></Tray>}><p>That is not on this load.</p></Screen>;
  const options = [{ value: "0", words: "Wherever it fits" }, ...levels.map((one) => ({ value: String(one.level), words: levelName(one.level, levels.length) })).reverse()];
  const keep = async (): Promise<void> => {
    const body = { ...envelope(), based_on: it.seq, level: level === "0" ? null : Number(level) };
    const answer = await claim({ method: "PATCH", path: studioPath(membership.studio.slug, `placements/${row.id}/`), body });
    if (answer === null) return;
    again();
    it.open(NO_SHEET);
  };
  const isOurs = row.mine || row.asked_by.id === membership.member.id || load.may.change;
  const tray = (
    <Tray isDead={it.saying.isDead}>
      <MainAct isDisabled={isAsking || !isOurs} onPress={() => void keep()}>{isAsking ? "Asking" : "Keep"}</MainAct>
      <Act onPress={() => { it.open(NO_SHEET); }}>Not now</Act>
    </Tray>
  );
  const { size } = row;
  return (
    <Screen title={placementMark(row)} when={`on ${load.number}`} within="/kilns" isSeam={false} tray={tray}>
      <p>
        {placementWords(row)}{here === null ? "" : `. Drawn on ${levelName(here, Math.max(levels.length, here)).toLowerCase().replace(/^(?!the )/, "the ")}`}.{" "}
        {size && joinFacts(size.is_round ? `${length(size.x_mm, units)} across` : `${length(size.x_mm, units)} by ${length(size.y_mm, units)}`, `${length(size.height_mm, units)} high`, size.is_assumed ? "shrinkage assumed" : `measured ${size.measured}`)}
      </p>
      {row.warnings.map(({ code, detail }) => <p key={code}>{detail}</p>)}
      {levels.length > 0 && <Choice legend="On which shelf" name="level" options={options} chosen={level} onChoose={choose} />}
      {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
      {row.piece && <Act href={`/pieces/${row.piece.id}`}>{`Open ${row.piece.mark}`}</Act>}
      <div class={css.far}>
        {!isOurs && <p class={css.said}>{`${row.maker?.first_name ?? "Somebody else"}’s ware: they, or who builds loads, take it off.`}</p>}
        <Act isDisabled={!isOurs} onPress={() => { it.takeOff(row); }}>Take it off the load</Act>
      </div>
    </Screen>
  );
}


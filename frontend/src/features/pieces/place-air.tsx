/** How the air moves at a place, as somebody judges it: it says how fast clay dries there. */
import { useState } from "preact/hooks";
import type { PlaceRow } from "../../api/shapes-pieces";
import { joinFacts } from "../../domain/format";
import { Choice } from "../../ui/act";
import { Asked } from "../../ui/frame";
import { Fact } from "../../ui/seam";
import { hasGrant, studioPath, useSession } from "../common/session";
import { envelope, useClaim } from "../common/use-claim";

/** The speeds are common practice, no source: nobody measures them. */
export const AIRS = [
  { value: "still", words: "Still", air_m_s: 0 },
  { value: "draught", words: "A slight draught", air_m_s: 0.3 },
  { value: "fan", words: "A fan or open door", air_m_s: 1 },
] as const;

export type Air = (typeof AIRS)[number]["value"];

/** The word nearest to a speed; nothing said: null. */
export function airOf(air_m_s: number | null): Air | null {
  if (air_m_s === null) return null;
  const apart = (one: (typeof AIRS)[number]): number => Math.abs(one.air_m_s - air_m_s);
  return AIRS.reduce((best, one) => (apart(one) < apart(best) ? one : best)).value;
}

const speed = (air_m_s: number): string => `${String(air_m_s)}\u202fm/s`;

export function PlaceAir({ place }: { place: PlaceRow }) {
  const { membership } = useSession();
  const { claim, isAsking, wrong } = useClaim();
  const [air_m_s, setAir] = useState(place.air_m_s);
  const bat = place.kind === "bat" && "a plaster bat: it draws water from below";
  const chosen = airOf(air_m_s);
  if (!hasGrant(membership, "manage_settings")) {
    const words = AIRS.find(({ value }) => value === chosen)?.words ?? "As in the room";
    return <Fact label="air" value={words} note={joinFacts(air_m_s !== null && speed(air_m_s), bat)} />;
  }
  const choose = (value: Air): void => {
    const wanted = AIRS.find((one) => one.value === value)?.air_m_s;
    if (wanted === undefined || isAsking) return;
    const path = studioPath(membership.studio.slug, `places/${place.id}/`);
    void claim<PlaceRow>({ method: "PATCH", path, body: { ...envelope(), air_m_s: wanted } }).then((answer) => { if (answer) setAir(answer.air_m_s); });
  };
  return (
    <>
      {bat && <Fact label="under it" value="A plaster bat" note="it draws water from below" />}
      <Asked>
        {wrong && <p role="alert">{wrong}</p>}
        <Choice legend="How the air moves here" name="air" options={AIRS.map((one) => ({ value: one.value, words: one.words, note: `reckoned as ${speed(one.air_m_s)}` }))} chosen={chosen} onChoose={choose} />
      </Asked>
    </>
  );
}

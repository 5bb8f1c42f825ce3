/** What if, of no piece: something that would be pressed now, in another room, under another cover, thicker. Needs a signal. */
import { useState } from "preact/hooks";
import { joinFacts, length, percent, temperature, upperFirst } from "../../domain/format";
import { Choice } from "../../ui/act";
import { Select } from "../../ui/select";
import { useSession } from "../common/session";
import { useNow } from "../common/use-now";
import { useWhatIf } from "./use-what-if";
import type { RoomChoice, WhatIf } from "./use-what-if";
import { CLAYS, SHAPES } from "./what-if-asked";
import type { Clay } from "./what-if-asked";
import { WhatIfForm } from "./what-if-form";
import css from "../studio/studio.module.css";

const spoken = (name: string): string => upperFirst(name.replaceAll("_", " "));

export function WhatIfScreen() {
  const [opened] = useState(useNow());
  const asked = useWhatIf(opened);
  const { units } = useSession().membership.member;
  return (
    <WhatIfForm change={asked.change} reckon={asked.reckon} within="/more" from="The studio reckons this" asItIs={length(asked.known.thickest_mm, units)}>
      <Clayed asked={asked} />
      <Rooms asked={asked} />
    </WhatIfForm>
  );
}

function Clayed({ asked: { known, setClay, setShape } }: { asked: WhatIf }) {
  return (
    <>
      <Select label="Clay" name="clay" options={CLAYS.map((value) => ({ value, words: spoken(value) }))} chosen={known.clay} none="Red earthenware" onChoose={(value) => { setClay(value === "" ? "red_earthenware" : value as Clay); }} />
      <Choice legend="What is thickest" name="shape" options={SHAPES} chosen={known.shape} onChoose={setShape} />
    </>
  );
}

function Rooms({ asked: { rooms, here, there } }: { asked: WhatIf }) {
  const options = rooms.map(({ id, name }) => ({ value: id, words: name }));
  return (
    <>
      <Select label="In the air of" name="here" options={options} chosen={here.id} none="15 °C and 65 %, assumed" onChoose={here.choose} />
      <AirNow room={here} />
      <Select label="Put in" name="there" options={options} chosen={there.id} none="Left where it is" onChoose={there.choose} />
      <AirNow room={there} />
    </>
  );
}

function AirNow({ room: { id, air } }: { room: RoomChoice }) {
  const { units } = useSession().membership.member;
  if (id === "") return null;
  return <p class={css.note}>{air ? joinFacts(temperature(air.air_c, units), percent(air.humidity_fraction), "at the last look") : "No reading there: 15 °C and 65 %, assumed."}</p>;
}

/** A cone is picked, not spelled: those with a nought stand apart from those without, each with what it needs. */
import type { Units } from "../../domain/format";
import { Select } from "../../ui/select";
import { coneOptions } from "./cone-series";

export function ConePicker({ label = "Cone, as on its foot", name = "cone", cone, onPick, units, wrong }: {
  label?: string;
  name?: string;
  cone: string;
  onPick: (cone: string) => void;
  units: Units;
  wrong?: string | null | undefined;
}) {
  return <Select label={label} name={name} groups={coneOptions(units, cone)} chosen={cone} onChoose={onPick} none="None yet" wrong={wrong} />;
}

/** The whole curve from the pressing on, fetched only when somebody asks for it: long, with every weighing beside the model. */
import { useState } from "preact/hooks";
import type { DryingAnswer } from "../../api/shapes-pieces";
import { Act } from "../../ui/act";

type Chart = typeof import("./whole-curve-chart").WholeCurveChart;

export function WholeCurve({ drying }: { drying: DryingAnswer }) {
  // A function in a state would be called: it stands in a box.
  const [box, setBox] = useState<{ Chart: Chart } | "asking" | "failed" | null>(null);
  if (drying.curve === null) return null;
  if (box === "asking") return <p>Fetching the chart…</p>;
  if (box === "failed") return <p>The chart is not on this phone yet; with a signal it comes.</p>;
  if (box !== null) return <box.Chart drying={drying} />;
  const ask = (): void => {
    setBox("asking");
    import("./whole-curve-chart").then(({ WholeCurveChart }) => { setBox({ Chart: WholeCurveChart }); }, () => { setBox("failed"); });
  };
  return <Act onPress={ask}>The whole curve</Act>;
}

/** The stages as the phone needs them without signal: the drawing of each, the act that leads on, and their order. */
import type { CoverState, Spot } from "../../api/shapes-pieces";
import type { StageMarkName } from "../../ui/marks";

const MARKS: Record<string, StageMarkName> = {
  wants_model: "model", wants_mould: "mould", to_press: "mould", in_mould: "in_mould", out: "out", joined: "joined", bone_dry: "bone_dry",
  in_bisque: "in_kiln", bisqued: "bisqued", glazed: "glazed", in_glaze: "in_kiln", glaze_fired: "glaze_fired", checked: "checked",
  packed: "checked", delivered: "delivered", scrapped: "lost", missing: "lost", let_go: "lost",
};

export function markOf(state: string, cover: string): StageMarkName {
  if (state === "drying") return cover === "" || cover === "open" ? "open" : "covered";
  return MARKS[state] ?? "model";
}

export const COVERS: readonly { value: CoverState; words: string; drying: string }[] = [
  { value: "open", words: "Open", drying: "drying open" },
  { value: "loose", words: "Loosely", drying: "drying, loosely covered" },
  { value: "tucked", words: "Tucked in", drying: "drying, tucked in" },
  { value: "sealed", words: "Sealed", drying: "drying, sealed" },
];

/** While there is water in it. */
export const WET_STAGES: readonly string[] = ["pressing", "assembly", "drying"];

export const STANDS_ON = [{ value: "board", words: "on a board" }, { value: "bat", words: "on a plaster bat" }, { value: "slats", words: "on slats, open below" }] as const;
export type StandsOn = (typeof STANDS_ON)[number]["value"];

/** As a studio newer than the phone may say something else, that is nothing said. */
export function onOf(said: string | undefined): StandsOn | "" {
  return STANDS_ON.find(({ value }) => value === said)?.value ?? "";
}

export function onWords(said: string): string {
  return STANDS_ON.find(({ value }) => value === said)?.words ?? "";
}

/** In the order of the job, each with the words of the act that says it came there. */
export const SPOTS: readonly (Spot & { act: string })[] = [
  { stage: "assembly", state: "joined", words: "joined", act: "Joined" },
  { stage: "drying", state: "drying", words: "drying", act: "Set to dry" },
  { stage: "drying", state: "bone_dry", words: "bone dry", act: "Call it dry" },
  { stage: "bisque", state: "in_bisque", words: "in the bisque kiln", act: "In the bisque kiln" },
  { stage: "bisque", state: "bisqued", words: "bisqued", act: "Bisqued" },
  { stage: "glaze", state: "glazed", words: "glazed", act: "Glazed" },
  { stage: "glaze", state: "in_glaze", words: "in the glaze kiln", act: "In the glaze kiln" },
  { stage: "glaze", state: "glaze_fired", words: "glaze fired", act: "Glaze fired" },
  { stage: "finished", state: "checked", words: "checked", act: "Checked" },
  { stage: "finished", state: "packed", words: "packed", act: "Packed" },
  { stage: "delivered", state: "delivered", words: "delivered", act: "Delivered" },
];

export type SpotAct = (typeof SPOTS)[number];

const ORDER = ["wants_model", "wants_mould", "to_press", "in_mould", "out", ...SPOTS.map((spot) => spot.state)];

export function spotOf(state: string): SpotAct | null {
  return SPOTS.find((spot) => spot.state === state) ?? null;
}

/** The spots that lie further on than where the piece is. */
export function furtherOn(state: string): SpotAct[] {
  const here = ORDER.indexOf(state);
  return here < 0 ? [] : SPOTS.filter((spot) => ORDER.indexOf(spot.state) > here);
}

export type MainStep = { kind: "demould" } | { kind: "cover" } | { kind: "weigh" } | { kind: "spot"; spot: SpotAct } | { kind: "none" };

/** The one act nearest the thumb. `isOnePart`: there is nothing to join it to, now or ever. */
export function mainStep(state: string, isOnePart: boolean): MainStep {
  if (state === "in_mould") return { kind: "demould" };
  if (state === "joined" || (state === "out" && isOnePart)) return { kind: "cover" };
  if (state === "drying") return { kind: "weigh" };
  if (state === "out") return { kind: "spot", spot: spotOf("joined") ?? neverSpot() };
  const next = state === "bone_dry" || spotOf(state) ? furtherOn(state)[0] : undefined;
  return next ? { kind: "spot", spot: next } : { kind: "none" };
}

function neverSpot(): never {
  throw new Error("Joined is one of the spots.");
}

/** What a helper may say ends with bone dry; the rest is the maker's word. */
export function isPastHelper(spot: Spot): boolean {
  return ORDER.indexOf(spot.state) > ORDER.indexOf("bone_dry");
}

/** Each line of the bench in words: verdict first, then evidence. */
import type { BenchRow, JoinRow, MouldRow } from "../../api/shapes";
import { clock } from "../../domain/clock";
import { fromAbout, about, count, joinFacts, likelyRange, ordinal, percent, span, upperFirst } from "../../domain/format";
import type { NatchKind } from "../../ui/natch";
import type { Line, Said } from "./bench-overlay";
import { isDue, stepWords } from "./covering-words";

export interface LineWords {
  mark: string;
  noun: string;
  natch: NatchKind;
  verdict: string;
  evidence: string;
  spoken: string;
  isLive: boolean;
}

interface When {
  now: Date;
  zone: string;
}

export const FAULTS = {
  hooked_edge: "Hooked edge",
  wet_mould: "Wet mould",
  undercut: "Undercut",
  still_soft: "Still soft",
  torn: "Torn",
  shrunk_on: "Shrunk on",
} as const;

export type Fault = keyof typeof FAULTS;

export const SAID_WORDS: Record<Said["verb"], string> = {
  demoulded: "Out", not_yet: "Not yet", stuck: "Stuck", joined: "Joined", pressed: "Pressed", covered: "Done",
};

function isFault(how: string | null): how is Fault {
  return how !== null && how in FAULTS;
}

/** The part's own name where it says more than the piece's: *body* of a sauce boat, but *its lid* for a lid. */
export function nounOf(row: BenchRow): string {
  const { piece, part } = row;
  return part === null || piece.noun.includes(part.role) ? piece.noun : part.role;
}

function spokenOf(mark: string, noun: string, evidence: string, verdict: string): string {
  const [first, ...rest] = evidence.split(" · ");
  const place = rest.length > 0 ? ` ${rest.join(", ")}.` : "";
  return `${mark}, ${noun}${first ? `, ${first}` : ""}, ${verdict.charAt(0).toLowerCase()}${verdict.slice(1)}.${place}`;
}

function saidWords(said: Said, mouldLabel: string | null, { zone }: When): { natch: NatchKind; verdict: string; evidence: string } {
  const how = isFault(said.how) ? FAULTS[said.how].toLowerCase() : null;
  const freed = said.verb === "demoulded" && mouldLabel !== null && `${mouldLabel} free`;
  return {
    natch: said.isKept ? "kept" : "done",
    verdict: `${SAID_WORDS[said.verb]} ${clock(said.at, zone)}`,
    evidence: joinFacts(said.isKept && "kept here", how, freed),
  };
}

function mouldVerdict(row: BenchRow, when: When): { natch: NatchKind; verdict: string } {
  const { now, zone } = when;
  const opens = row.window?.opens?.p50;
  const again = row.look_again_at && new Date(row.look_again_at);
  if (row.verdict === "past") return { natch: "past", verdict: "Past its time" };
  if (again && again > now) return { natch: "next", verdict: `Look again ${about(again, now, zone, true)}` };
  if (row.verdict === "in_window") return { natch: "hand", verdict: "In its window" };
  if (row.verdict === "asked") return { natch: "guess", verdict: "Feel it" };
  if (row.verdict === "not_in_this_room" || !opens) return { natch: "guess", verdict: "Not in this room" };
  return { natch: "next", verdict: upperFirst(fromAbout(new Date(opens), now, zone)) };
}

function dryVerdict(row: BenchRow, { now, zone }: When): { natch: NatchKind; verdict: string } {
  if (row.cover_next && isDue(row.cover_next, now)) return { natch: "hand", verdict: upperFirst(row.cover_next.words) };
  switch (row.verdict) {
    case "ready":
      return { natch: "today", verdict: "Ready for bisque" };
    case "worth_a_touch":
      return { natch: "hand", verdict: "Worth a touch" };
    case "not_in_this_room":
      return { natch: "guess", verdict: "Not in this room" };
    default: {
      const { p10, p90 } = row.ready_at ?? { p10: null, p90: null };
      if (p10 && !p90) return { natch: "next", verdict: upperFirst(fromAbout(new Date(p10), now, zone)) };
      if (p10 && p90) return { natch: "next", verdict: likelyRange(new Date(p10), new Date(p90), now, zone) };
      return { natch: "guess", verdict: row.verdict === "asked" ? "Feel it" : upperFirst(row.piece.state_words) };
    }
  }
}

function pieceEvidence(row: BenchRow, when: When): string {
  const { now } = when;
  const whose = !row.mine && row.maker?.first_name;
  if (row.part === null || row.mould === null) {
    if (row.cover_next && isDue(row.cover_next, now)) return joinFacts(row.piece.state_words, row.place?.name, whose);
    if (row.cover_next) return joinFacts(stepWords(row.cover_next, now, when.zone), row.place?.name, whose);
    const gone = span(new Date(row.since_at), now);
    const dry = row.ready_at?.p10 ? "likely dry" : gone;
    return joinFacts(row.verdict === "drying" ? dry : `${row.piece.state_words} ${gone}`, row.place?.name, whose);
  }
  const { label, press_since_dry } = row.mould;
  if (row.verdict !== "past" && row.verdict !== "in_window") {
    const press = press_since_dry !== null && press_since_dry > 1 ? `${label}, ${ordinal(press_since_dry)} press` : label;
    return joinFacts(press, row.place?.name, whose);
  }
  return joinFacts(`in mould ${span(new Date(row.since_at), now)}`, label, row.place?.name ?? whose);
}

function pieceWords(row: BenchRow, said: Said | null, when: When): LineWords {
  const [mark, noun] = [row.piece.mark, nounOf(row)];
  const evidence = row.clash_id !== null ? joinFacts("somebody must say which", row.place?.name) : pieceEvidence(row, when);
  const told = row.clash_id !== null
    ? { natch: "two" as const, verdict: "Two stories" }
    : row.part ? mouldVerdict(row, when) : dryVerdict(row, when);
  const words = said ? saidWords(said, row.mould?.label ?? null, when) : { ...told, evidence };
  return { mark, noun, ...words, spoken: spokenOf(mark, noun, words.evidence, words.verdict), isLive: !said && words.natch === "past" };
}

const JOIN_WORDS: Record<JoinRow["verdict"], { natch: NatchKind; verdict: string }> = {
  now: { natch: "hand", verdict: "Join now" },
  wait: { natch: "next", verdict: "Wait for the softest" },
  too_stiff: { natch: "guess", verdict: "Feel it first" },
};

/** Parts that must wait say from when; a cover that brings them to meet comes first. */
function joinVerdict({ verdict, window, cover_next }: JoinRow, { now, zone }: When): { natch: NatchKind; verdict: string } {
  const opens = window?.opens?.p50;
  if (verdict !== "wait" || !opens) return JOIN_WORDS[verdict];
  const from = fromAbout(new Date(opens), now, zone);
  if (cover_next === null) return { natch: "next", verdict: upperFirst(from) };
  return { natch: "hand", verdict: `${upperFirst(cover_next.words)}, then ${from}` };
}

function joinWords(row: JoinRow, said: Said | null, when: When): LineWords {
  const { mark, noun } = row.piece;
  const until = row.until && row.verdict === "now" ? `until ${about(new Date(row.until), when.now, when.zone)}` : null;
  const told = row.clash_id !== null ? { natch: "two" as const, verdict: "Two stories" } : joinVerdict(row, when);
  const parts = row.parts.map((part) => part.role).join(" + ");
  const whose = !row.mine && row.maker?.first_name;
  // A window too short to join in is made longer by a cover that is due now.
  const orCover = row.cover_next && row.cover_next.part_ids.length > 0 && isDue(row.cover_next, when.now) && `or ${row.cover_next.words}`;
  const evidence = row.verdict === "now" ? joinFacts(parts, until ?? row.place?.name, orCover, whose) : joinFacts(parts, row.reason, whose);
  const words = said ? saidWords(said, null, when) : { ...told, evidence };
  return { mark, noun, ...words, spoken: spokenOf(mark, noun, words.evidence, words.verdict), isLive: false };
}

const DRYNESS: Record<MouldRow["dryness"]["word"], string> = { dry: "Dry", usable: "Usable", rest: "Rest", unknown: "Dryness not known" };

function mouldWords(row: MouldRow, said: Said | null, when: When): LineWords {
  const { word, free_water_fraction, presses_since_dry } = row.dryness;
  const water = word === "usable" && free_water_fraction !== null ? `, ${percent(free_water_fraction)} water` : "";
  const presses = presses_since_dry ? `${count(presses_since_dry, "press", "presses")} since dry` : null;
  const told: { natch: NatchKind; verdict: string } = row.may_press
    ? { natch: "next", verdict: `${DRYNESS[word]}${water}` }
    : { natch: "done", verdict: word === "rest" ? DRYNESS.rest : "Not now" };
  const evidence = row.may_press ? joinFacts(presses, row.place?.name, row.owner?.first_name) : row.reason;
  const words = said ? saidWords(said, null, when) : { ...told, evidence };
  const [mark, noun] = [row.set.label, row.set.makes];
  return { mark, noun, ...words, spoken: spokenOf(mark, noun, words.evidence, words.verdict), isLive: false };
}

export function wordsOf(line: Line, now: Date, zone: string): LineWords {
  const when = { now, zone };
  switch (line.kind) {
    case "piece":
      return pieceWords(line.row, line.said, when);
    case "join":
      return joinWords(line.row, line.said, when);
    case "mould":
      return mouldWords(line.row, line.said, when);
  }
}

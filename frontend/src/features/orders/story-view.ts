/** The story of an order: newest first, in weeks, each line with the marks it is about. */
import type { Page } from "../../api/pages";
import type { OrderTold, ToldKind } from "../../api/shapes-orders";
import { clock, twoTimes, wallTime } from "../../domain/clock";
import { joinFacts, upperFirst } from "../../domain/format";
import { mondayOf } from "./time-marks";

export const FILTERS = [
  { value: "all", words: "All" },
  { value: "losses", words: "Losses" },
  { value: "firings", words: "Firings" },
  { value: "promises", words: "Promises" },
  { value: "clients", words: "Client" },
  { value: "photos", words: "Photos" },
] as const;

export type StoryFilter = (typeof FILTERS)[number]["value"];

const KINDS: Record<Exclude<StoryFilter, "all" | "photos">, ToldKind> = { losses: "loss", firings: "firing", promises: "promise", clients: "client" };

/** Rows of a filter among those heard already: until the studio answers, and without signal. */
export function filtered(rows: readonly OrderTold[], filter: StoryFilter): OrderTold[] {
  if (filter === "all") return [...rows];
  return rows.filter((row) => (filter === "photos" ? row.photo_ids.length > 0 || row.has_hidden_photos : row.kind === KINDS[filter]));
}

export interface StoryLine {
  key: string;
  day: string;
  clock: string;
  marks: string;
  pieceIds: readonly { id: string; mark: string }[];
  words: string;
  evidence: string;
  note: string | null;
  photoIds: readonly string[];
  isTakenBack: boolean;
  isLoss: boolean;
}

export interface StoryWeek {
  key: string;
  words: string;
  lines: StoryLine[];
}

const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

interface Around {
  now: Date;
  zone: string;
}

/** `Week of 26 October`, with the year where it is not this one. */
function weekWords(monday: Date, { now, zone }: Around): string {
  const [wall, today] = [wallTime(monday, zone), wallTime(now, zone)];
  const year = wall.year === today.year ? "" : ` ${String(wall.year)}`;
  return `Week of ${String(wall.day)} ${MONTHS[wall.month - 1] ?? ""}${year}`;
}

export function storyWeeks(rows: readonly OrderTold[], around: Around): StoryWeek[] {
  const weeks: StoryWeek[] = [];
  for (const row of rows) {
    const monday = mondayOf(new Date(row.happened_at), around.zone);
    const key = monday.toISOString();
    if (weeks.at(-1)?.key !== key) weeks.push({ key, words: weekWords(monday, around), lines: [] });
    weeks.at(-1)?.lines.push(...linesOf(row, around));
  }
  return weeks;
}

function linesOf(row: OrderTold, { now, zone }: Around): StoryLine[] {
  const at = new Date(row.happened_at);
  const wall = wallTime(at, zone);
  const base = {
    day: `${wall.weekday} ${String(wall.day)}`, clock: clock(at, zone), evidence: evidenceOf(row, now, zone),
    isTakenBack: row.is_taken_back, isLoss: row.kind === "loss",
  };
  const own = row.words === "" ? [] : [{ ...base, key: row.id, marks: "", pieceIds: [], words: upperFirst(row.words), note: row.note, photoIds: row.photo_ids }];
  const pieces = row.lines.map((line, place) => ({
    ...base, key: `${row.id}-${String(place)}`, marks: markRange(line.marks), words: upperFirst(line.words),
    pieceIds: line.piece_ids.map((id, index) => ({ id, mark: line.marks[index] ?? "" })),
    note: place === 0 && own.length === 0 ? row.note : null,
    photoIds: place === 0 && own.length === 0 ? row.photo_ids : [],
  }));
  return [...own, ...pieces];
}

/** Who said it; when it was written, if that was later; what came with the piece or is told elsewhere; who took it back. */
function evidenceOf(row: OrderTold, now: Date, zone: string): string {
  const late = row.is_late ? twoTimes(new Date(row.happened_at), new Date(row.written_at), now, zone).split(" · ")[1] : null;
  const back = row.is_taken_back ? `taken back${row.taken_back_by ? ` by ${row.taken_back_by.first_name}` : ""}` : null;
  const past = row.came_from_other_order && "from before it came to this order";
  const photos = row.has_hidden_photos && "its photos stand in the piece’s own story";
  return joinFacts(late, back, past, photos, row.member.first_name);
}

const CUT = /^(\D*)(\d+)$/;

/** `T05–T10` where the numbers follow each other, else each by itself. */
export function markRange(marks: readonly string[]): string {
  const runs: [string, string][] = [];
  for (const mark of marks) {
    const last = runs.at(-1);
    if (last && follows(last[1], mark)) last[1] = mark;
    else runs.push([mark, mark]);
  }
  return runs.map(([first, last]) => (first === last ? first : follows(first, last) ? `${first}, ${last}` : `${first}–${last}`)).join(", ");
}

function follows(one: string, other: string): boolean {
  const [before, after] = [CUT.exec(one), CUT.exec(other)];
  return before !== null && after !== null && before[1] === after[1] && Number(after[2]) === Number(before[2]) + 1;
}

/** The next page's path under the studio; the server names it from the root. */
export function pathUnder(studio: string, address: string): string {
  const at = address.indexOf(studio);
  return at < 0 ? address : address.slice(at + studio.length);
}

export function rowsOf(pages: readonly Page<OrderTold>[]): OrderTold[] {
  const seen = new Set<string>();
  return pages.flatMap((page) => page.results).filter((row) => !seen.has(row.id) && seen.add(row.id));
}

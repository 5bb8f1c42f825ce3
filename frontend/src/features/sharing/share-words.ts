/** Links to an order and what its client is asked, in words. Pure. */
import type { Approval, LinkWanted, OrderLink } from "../../api/shapes-orders";
import { date, dayAndClock } from "../../domain/clock";
import { joinFacts, upperFirst } from "../../domain/format";
import type { NatchKind } from "../../ui/natch";

export type Shown = NonNullable<LinkWanted["shows"]>[number];

/** In the order of the page. */
export const ITEMS: readonly { value: Shown; words: string; note?: string }[] = [
  { value: "counts", words: "How many", note: "and finished" },
  { value: "delivery", words: "When", note: "likely, promised" },
  { value: "approvals", words: "To approve", note: "they answer" },
  { value: "stages", words: "How far", note: "by stage" },
  { value: "history", words: "Story", note: "day by day" },
  { value: "losses", words: "Losses", note: "on the way" },
  { value: "papers", words: "Papers", note: "signed, reports" },
];

export const FIRST_CHOSEN: readonly Shown[] = ["counts", "delivery", "approvals", "stages", "history"];

export const PEOPLE = [
  { value: "initials", words: "By initials" },
  { value: "first_name", words: "By first name" },
  { value: "nobody", words: "Not named" },
] as const;

export const KINDS = [
  { value: "client", words: "The client", note: "sees what is chosen" },
  { value: "visitor", words: "A visitor", note: "reads the history as it was kept" },
] as const;

export const ABOUT = [
  { value: "colour", words: "Colour" },
  { value: "pattern", words: "Pattern" },
  { value: "shape", words: "Shape" },
  { value: "size", words: "Size" },
  { value: "glaze", words: "Glaze" },
  { value: "other", words: "Something else" },
] as const;

export const WAITS = [
  { value: "shaping", words: "The shaping", note: "while the clay is soft" },
  { value: "bisque", words: "The first firing" },
  { value: "glazing", words: "The glazing" },
  { value: "delivery", words: "The handing over" },
] as const;

export const ANSWERS = [
  { value: "yes", words: "Yes" },
  { value: "no", words: "No" },
  { value: "let_go", words: "Need not be asked any more" },
] as const;

export interface LinkWords {
  natch: NatchKind;
  verdict: string;
  evidence: string;
}

/** The key is nobody's to show: a link is known by when it was made. */
export function linkWords(link: OrderLink, now: Date, zone: string): LinkWords {
  // It ends with its last day, so an instant before says which day that is.
  const lastDay = date(new Date(new Date(link.expires_at).getTime() - 1), now, zone);
  const ends = {
    live: `Opens until ${lastDay}`,
    expired: `Ran out ${lastDay}`,
    revoked: `Revoked ${link.revoked_at ? date(new Date(link.revoked_at), now, zone) : ""}`.trim(),
  }[link.state];
  const [last] = link.opened_at;
  const often = link.opened_times === 1 ? "once" : `${String(link.opened_times)} times`;
  const opened = last === undefined ? "not opened yet" : `opened ${often}, last ${dayAndClock(new Date(last), now, zone)}`;
  const whom = link.kind === "visitor" ? "for a visitor" : null;
  return { natch: link.state === "live" ? "next" : "done", verdict: ends, evidence: joinFacts(whom, opened, `made ${date(new Date(link.made_at), now, zone)}`) };
}

export interface ApprovalWords {
  label: string;
  natch: NatchKind;
  verdict: string;
  evidence: string;
}

/** `due` is its day as an instant, or nothing where it cannot be read. */
export function approvalWords(approval: Approval, due: Date | null, now: Date, zone: string): ApprovalWords {
  const { answer } = approval;
  const day = due === null ? "" : date(due, now, zone);
  if (answer === null) return { label: `by ${day}`, natch: "hand", verdict: approval.title, evidence: approval.waits_words };
  const said = upperFirst(answer.words);
  return { label: date(new Date(answer.happened_at), now, zone), natch: "done", verdict: said, evidence: joinFacts(approval.title, answer.client_words) };
}

/** What a link is asked to show: a visitor's shows the kept history and nothing else. */
export function wanted(choice: { kind: LinkWanted["kind"]; shows: ReadonlySet<string>; photos: ReadonlySet<string>; people: LinkWanted["people"]; until: string }): LinkWanted {
  const { kind, people, until } = choice;
  const isClient = kind === "client";
  const shows = ITEMS.flatMap(({ value }) => (isClient && choice.shows.has(value) ? [value] : []));
  return { kind, people, expires_on: until, shows, shown_photo_ids: isClient ? [...choice.photos] : [] };
}

export function isWhole(link: LinkWanted): boolean {
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(link.expires_on);
  return isDay && (link.kind === "visitor" || (link.shows ?? []).length + (link.shown_photo_ids ?? []).length > 0);
}

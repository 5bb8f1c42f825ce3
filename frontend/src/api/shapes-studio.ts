/** What reminders, devices, tokens, people and the air answer. */
import type { Page } from "./pages";

export interface Reminder {
  id: string;
  kind: string;
  class: "A" | "B" | "C" | "D";
  title: string;
  body: string;
  link: string;
  due_at: string;
  state: "due" | "sent" | "done" | "snoozed" | "let_go" | "withdrawn";
  snoozes: number;
  snoozed_until: string | null;
  objects: { kind: string; id: string; mark: string }[];
  asks: string | null;
}

export type ReminderPage = Page<Reminder> & { journal_seq?: number };

export interface DeviceRow {
  id: string;
  name: string;
  member_id: string | null;
  is_shared: boolean;
  is_locked: boolean;
  added_at: string;
  seen_at: string | null;
  revoked_at: string | null;
}

export interface TokenRow {
  id: string;
  name: string;
  prefix: string;
  grants: string[];
  made_at: string;
  used_at: string | null;
  revoked_at: string | null;
}

export interface MemberRow {
  id: string;
  first_name: string;
  full_name: string;
  initials: string;
  email: string | null;
  roles: string[];
}

export interface InvitationRow {
  id: string;
  roles: string[];
  email: string;
  state: "open" | "taken" | "withdrawn" | "expired";
  invited_at: string;
  expires_at: string;
}

export interface ReadingRow {
  id: string;
  taken_at: string;
  air_c: number | null;
  humidity_fraction: number | null;
  use: "used" | "left_out" | "asked";
  why: string;
}

/** What a client was asked, as this phone knows it: what was asked and written down here is laid over it. Pure. */
import type { Approval, ApprovalsAnswer, ApprovalSaid } from "../../api/shapes-orders";
import type { KeptAct } from "../../offline/kept-act";
import { unseenBy } from "../../offline/kept-act";
import { ABOUT, WAITS } from "./share-words";

const text = (act: KeptAct, name: string): string => {
  const value = act.body[name];
  return typeof value === "string" ? value : "";
};

function asked(act: KeptAct): Approval {
  const about = ABOUT.find(({ value }) => value === text(act, "about"))?.value ?? "other";
  const waits = WAITS.find(({ value }) => value === text(act, "waits"))?.value ?? "delivery";
  const name = about === "other" ? "Something" : ABOUT.find(({ value }) => value === about)?.words;
  return {
    id: act.id, about, waits, title: `${name ?? ""} to approve`, question: text(act, "question"), waits_words: "kept on this phone",
    due_date: text(act, "due_date"), asked_at: text(act, "happened_at"), asked_by: { id: "", first_name: "", initials: "" }, clay_words: "", message: "", answer: null,
  };
}

function answered(approval: Approval, act: KeptAct): Approval {
  const answer = text(act, "answer");
  const words = { yes: "the client said yes, as told to us", no: "the client said no, as told to us" }[answer] ?? "no longer asked";
  const said: ApprovalSaid = {
    id: act.id, answer: answer === "yes" || answer === "no" ? answer : "let_go", through: "told", words, client_words: "", happened_at: text(act, "happened_at"), member: null,
  };
  return { ...approval, clay_words: "", message: "", answer: said };
}

export function approvalsView(snapshot: ApprovalsAnswer, acts: readonly KeptAct[], orderId: string): Approval[] {
  const mine = unseenBy(snapshot.journal_seq, acts).filter((act) => act.about["commission_id"] === orderId);
  const after = (rows: Approval[], act: KeptAct): Approval[] => {
    if (act.verb === "asked_approval") return [...rows, asked(act)];
    if (act.verb !== "answered_approval") return rows;
    return rows.map((row) => (row.id === act.about["approval_id"] ? answered(row, act) : row));
  };
  return mine.reduce(after, [...snapshot.results]);
}

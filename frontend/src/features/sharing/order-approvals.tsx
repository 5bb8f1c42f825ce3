/** On the order itself: what its client still has to say. */
import type { OrderAnswer } from "../../api/shapes-orders";
import { Fact } from "../../ui/seam";
import { noonOf } from "../../domain/wall";
import type { Around } from "../orders/order-words";
import { useSession } from "../common/session";
import { approvalWords } from "./share-words";
import { useApprovals } from "./use-share";

export function OrderApprovals(props: { answer: OrderAnswer; around: Around }) {
  // A shared phone is told nothing of clients, and need not ask.
  return useSession().shared ? null : <Waiting {...props} />;
}

function Waiting({ answer: { commission }, around: { now, zone } }: { answer: OrderAnswer; around: Around }) {
  const approvals = useApprovals(commission.id);
  const waiting = approvals.filter((approval) => approval.answer === null && commission.state === "open");
  return (
    <>
      {waiting.map((approval) => {
        const { label, natch, verdict, evidence } = approvalWords(approval, noonOf(approval.due_date, zone), now, zone);
        return <Fact key={approval.id} label={label} natch={natch} value={verdict} note={`${commission.client_name}, ${evidence}`} />;
      })}
    </>
  );
}

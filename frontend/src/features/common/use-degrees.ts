import { inDegrees } from "../../domain/degrees";
import { useSession } from "./session";

/** What the studio says, with temperatures in this person's degrees. */
export function useDegrees(): (sentence: string) => string {
  const { units } = useSession().membership.member;
  return (sentence) => inDegrees(sentence, units);
}

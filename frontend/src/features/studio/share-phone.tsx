/** An owner makes the phone in their hand everybody's: it stays in the shed, and asks who is at work. */
import { useState } from "preact/hooks";
import { count } from "../../domain/format";
import { OfflineError, ProblemError } from "../../api/problem";
import { Act, Field } from "../../ui/act";
import { useSession } from "../common/session";
import { useKeptActs } from "../common/use-outbox";
import css from "./studio.module.css";

export function SharePhone() {
  const { share } = useSession();
  const waiting = useKeptActs().filter((act) => act.state === "waiting").length;
  const [name, type] = useState("Shed phone");
  const [isAsking, setAsking] = useState(false);
  const [wrong, setWrong] = useState<string | null>(null);
  const submit = async (): Promise<void> => {
    setAsking(true);
    setWrong(null);
    try {
      await share(name.trim());
    } catch (error) {
      if (!(error instanceof OfflineError) && !(error instanceof ProblemError)) throw error;
      setWrong(error.message);
      setAsking(false);
    }
  };
  return (
    <form class={css.section} aria-label="This phone for everybody" onSubmit={(event) => { event.preventDefault(); void submit(); }}>
      <h2>This phone for everybody</h2>
      <p class={css.note}>
        For a phone that stays in the shed. It asks who is at work, shows no clients, contacts or prices, and is put down when nobody touches it for 10 min. You are signed out of it.
        {waiting > 0 && ` ${count(waiting, "act", "acts")} of yours kept here wait until you sign in on it again: send them first.`}
      </p>
      <Field label="What it is called" name="name" most={80} value={name} onType={type} autocomplete="off" wrong={wrong} />
      <Act type="submit" isDisabled={isAsking || name.trim() === "" || waiting > 0}>{isAsking ? "Asking" : "Share this phone"}</Act>
    </form>
  );
}

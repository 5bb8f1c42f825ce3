import { useState } from "preact/hooks";
import { dayAndClock } from "../../domain/clock";
import { Act, Field, SmallAct } from "../../ui/act";
import { Toggles } from "../../ui/toggles";
import { useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import css from "./studio.module.css";
import { useTokens } from "./use-me";

const GRANTS = [
  { value: "record_climate", words: "Write room air", note: "a meter" },
  { value: "see_studio", words: "Read the studio", note: "a script" },
  { value: "move_place", words: "Move ware" },
] as const;

/** Keys for scripts and meters: named, narrow, shown once. */
export function MyTokens() {
  const zone = useZone();
  const now = useNow();
  const { grants } = useSession().membership.member;
  const { tokens, claim, key, make, revoke } = useTokens();
  const [name, type] = useState("");
  const [chosen, choose] = useState<ReadonlySet<string>>(new Set(["record_climate"]));
  const [askedId, ask] = useState<string | null>(null);
  const toggle = (grant: string): void => {
    const next = new Set(chosen);
    if (!next.delete(grant)) next.add(grant);
    choose(next);
  };
  const submit = async (): Promise<void> => {
    if (await make(name.trim(), [...chosen])) type("");
  };
  return (
    <form class={css.section} aria-label="Keys" onSubmit={(event) => { event.preventDefault(); void submit(); }}>
      <h2>Keys for meters and scripts</h2>
      {tokens.map((token) => (
        <div key={token.id} class={css.line}>
          <p>
            <b>{token.name}</b>
            <br />
            <span class={css.note}>{token.prefix}… · {token.used_at ? `used ${dayAndClock(new Date(token.used_at), now, zone)}` : "not used yet"}</span>
          </p>
          {askedId === token.id
            ? <SmallAct spoken={`Revoke ${token.name} for good`} onPress={() => { ask(null); void revoke(token.id); }}>For good</SmallAct>
            : <SmallAct spoken={`Revoke ${token.name}`} onPress={() => { ask(token.id); }}>Revoke</SmallAct>}
        </div>
      ))}
      {key && <><p>Copy it now; it is shown this once.</p><p class={css.key}>{key}</p></>}
      <Field label="Name of the new key" name="name" most={80} value={name} onType={type} wrong={claim.wrongAt("#/name")} />
      <Toggles legend="It may" options={GRANTS.filter((grant) => grants.includes(grant.value))} chosen={chosen} onToggle={toggle} />
      {(claim.wrongAt("#/grants") ?? claim.wrong) && <p class={css.wrong} role="alert">{claim.wrongAt("#/grants") ?? claim.wrong}</p>}
      <Act type="submit" isDisabled={claim.isAsking || name.trim() === "" || chosen.size === 0}>Make a key</Act>
    </form>
  );
}

/** Who is in the studio; an owner invites, and says what each may do. */
import { useState } from "preact/hooks";
import type { MemberRow } from "../../api/shapes-studio";
import { dayAndClock } from "../../domain/clock";
import { Act, Field, SmallAct } from "../../ui/act";
import { Toggles } from "../../ui/toggles";
import { Screen } from "../common/screen";
import { hasGrant, useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { MyDevices } from "./me-devices";
import { SharePhone } from "./share-phone";
import css from "./studio.module.css";
import { ROLES, rolesWords, useInvitations, useMembers } from "./use-people";
import type { Invitations } from "./use-people";

const TITLE = "People";

export function PeopleScreen() {
  const screen = useMembers();
  const { membership } = useSession();
  const mayManage = hasGrant(membership, "manage_members");
  return (
    <WhenHeard title={TITLE} screen={screen}>
      {({ results }, heardAt) => (
        <Screen title={TITLE} when={membership.studio.name} heardAt={heardAt} isSeam={false}>
          {mayManage ? <Managed members={results} again={screen.again} /> : results.map((member) => <Person key={member.id} member={member} />)}
        </Screen>
      )}
    </WhenHeard>
  );
}

function Person({ member, children }: { member: MemberRow; children?: preact.ComponentChildren }) {
  return (
    <div class={css.line}>
      <p><b>{member.first_name}</b>, {member.initials}<br /><span class={css.note}>{rolesWords(member.roles)}{member.email && ` · ${member.email}`}</span></p>
      {children}
    </div>
  );
}

function Managed({ members, again }: { members: readonly MemberRow[]; again: () => void }) {
  const invitations = useInvitations();
  const [changedId, change] = useState<string | null>(null);
  return (
    <>
      {members.map((member) => (changedId === member.id
        ? <RolesOf key={member.id} member={member} invitations={invitations} close={() => { change(null); again(); }} />
        : <Person key={member.id} member={member}><SmallAct spoken={`Change what ${member.first_name} may do`} onPress={() => { change(member.id); }}>Change</SmallAct></Person>))}
      <Act href="/refused">What was refused</Act>
      <Act href="/held">Came too late</Act>
      <Invite invitations={invitations} />
      <MyDevices />
      <SharePhone />
    </>
  );
}

function useRoles(first: readonly string[]): [ReadonlySet<string>, (role: string) => void] {
  const [roles, set] = useState<ReadonlySet<string>>(new Set(first));
  return [roles, (role) => {
    const next = new Set(roles);
    if (!next.delete(role)) next.add(role);
    set(next);
  }];
}

function RolesOf({ member, invitations: { claim, setRoles }, close }: { member: MemberRow; invitations: Invitations; close: () => void }) {
  const [roles, toggle] = useRoles(member.roles);
  const save = async (): Promise<void> => {
    if (await setRoles(member.id, [...roles])) close();
  };
  return (
    <form class={css.section} onSubmit={(event) => { event.preventDefault(); void save(); }}>
      <Toggles legend={`${member.first_name} is`} options={ROLES} chosen={roles} onToggle={toggle} />
      {(claim.wrongAt("#/roles") ?? claim.wrong) && <p class={css.wrong} role="alert">{claim.wrongAt("#/roles") ?? claim.wrong}</p>}
      <div class={css.two}>
        <Act onPress={close}>Not now</Act>
        <Act type="submit" isDisabled={claim.isAsking || roles.size === 0}>Keep</Act>
      </div>
    </form>
  );
}

function Invite({ invitations: { open, claim, link, invite, withdraw } }: { invitations: Invitations }) {
  const zone = useZone();
  const now = useNow();
  const [roles, toggle] = useRoles(["maker"]);
  const [email, type] = useState("");
  return (
    <form class={css.section} aria-label="Invite" onSubmit={(event) => { event.preventDefault(); void invite([...roles], email.trim()); }}>
      <h2>Invite somebody</h2>
      <Toggles legend="As" options={ROLES} chosen={roles} onToggle={toggle} />
      <Field label="E-mail, to know who it is for" name="email" autocomplete="off" value={email} onType={type} wrong={claim.wrongAt("#/email")} />
      {(claim.wrongAt("#/roles") ?? claim.wrong) && <p class={css.wrong} role="alert">{claim.wrongAt("#/roles") ?? claim.wrong}</p>}
      <Act type="submit" isDisabled={claim.isAsking || roles.size === 0}>Make a link</Act>
      {link && <><p>Send it yourself; it is shown this once, and one person can take it.</p><p class={css.key}>{link}</p></>}
      {open.map((one) => (
        <div key={one.id} class={css.line}>
          <p>{one.email || "somebody"}, as {rolesWords(one.roles)}<br /><span class={css.note}>until {dayAndClock(new Date(one.expires_at), now, zone)}</span></p>
          <SmallAct spoken={`Withdraw the invitation of ${one.email || "somebody"}`} onPress={() => { void withdraw(one.id); }}>Withdraw</SmallAct>
        </div>
      ))}
    </form>
  );
}

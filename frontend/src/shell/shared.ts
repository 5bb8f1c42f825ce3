/** A shared phone: set up by its owner, picked up by whoever is at work, put down again, and signed off for good. */
import { API, ask, get, setDevice, setShared } from "../api/client";
import { OfflineError, ProblemError } from "../api/problem";
import type { Me, Membership, SharedMe, SharedPerson } from "../api/shapes";
import { PLAIN, setLook, textOf } from "../features/common/look";
import { studioPath } from "../features/common/session";
import { dropCaches } from "../offline/cache";
import { dropHolder, readHolder, writeHolder } from "../offline/holder";
import type { Holder } from "../offline/holder";
import { uuid7 } from "../offline/ids";
import type { Phone } from "../offline/phone";
import { readShared, senderOf, writeShared } from "../offline/shared";
import type { SharedPhone } from "../offline/shared";
import { forgetTouch, isUntouched } from "./lock";
import { membershipOf, outOf, signOut } from "./signing";

/** It lies in the shed. */
const SHED = { ...PLAIN, theme: "shed" } as const;

/** Make the phone that its owner holds everybody's: from now on it calls by a key of its own, and the owner's session ends here. */
export async function shareThisPhone(phone: Phone, holder: Holder, name: string): Promise<SharedPhone> {
  const membership = membershipOf(holder);
  if (!membership) throw new Error("Only who belongs to a studio shares a phone.");
  const body = { id: uuid7(), happened_at: new Date().toISOString(), based_on: 0, name, is_shared: true };
  const made = await ask<{ key: string }>({ method: "POST", path: studioPath(membership.studio.slug, "devices/"), body });
  const { studio } = membership;
  const shared = { deviceId: body.id, key: made.key, name, studio, people: [], known: {}, isGone: false };
  // First of all: the key is shown this once.
  await writeShared(phone.db, shared);
  await signOut(phone);
  setLook(SHED, null);
  begin(phone, shared);
  return refreshShared(phone, shared);
}

/** Who had it in their hand when the page was left, if they only just did; else nobody. */
export async function resumeShared(phone: Phone): Promise<{ shared: SharedPhone; holder: Holder | null } | null> {
  const shared = await readShared(phone.db);
  if (!shared) return null;
  begin(phone, shared);
  const holder = await readHolder(phone.db);
  const membership = holder && membershipOf(holder);
  if (shared.isGone || !membership || isUntouched()) {
    await putDown(phone, shared);
    return { shared, holder: null };
  }
  setShared({ key: shared.key, memberId: membership.member.id });
  return { shared, holder };
}

function begin(phone: Phone, shared: SharedPhone): void {
  setDevice(null);
  setShared({ key: shared.key, memberId: null });
  void phone.outbox.signIn(senderOf(shared));
}

/** Ask again who is in the studio. What was known stays where there is no answer. */
export async function refreshShared(phone: Phone, shared: SharedPhone): Promise<SharedPhone> {
  try {
    const me = await get<SharedMe>(`${API}/me/`);
    // Somebody may have picked it up meanwhile.
    const now = (await readShared(phone.db)) ?? shared;
    const fresh = me.device ? { ...now, name: me.device.name, studio: me.device.studio, people: me.device.people } : now;
    await writeShared(phone.db, fresh);
    return fresh;
  } catch (error) {
    if (error instanceof ProblemError && outOf(error) === "signed_off") return signedOff(phone, shared);
    if (error instanceof ProblemError || error instanceof OfflineError) return shared;
    throw error;
  }
}

/** Somebody says that they are at work. Raises `OfflineError` where this phone does not know yet what they may do. */
export async function pickUp(phone: Phone, shared: SharedPhone, person: SharedPerson): Promise<{ shared: SharedPhone; holder: Holder }> {
  await dropCaches(phone.db);
  setShared({ key: shared.key, memberId: person.id });
  const membership = await membershipOn(shared, person).catch((error: unknown) => {
    setShared({ key: shared.key, memberId: null });
    throw error;
  });
  const me: Me = { username: senderOf(shared), memberships: [membership] };
  const holder = { me, slug: shared.studio.slug, deviceId: shared.deviceId };
  const known = { ...shared, known: { ...shared.known, [person.id]: membership } };
  await writeShared(phone.db, known);
  await writeHolder(phone.db, holder);
  const { left_handed, text } = membership.member;
  setLook({ ...SHED, hand: left_handed ? "left" : "right", text: textOf(text) }, null);
  return { shared: known, holder };
}

async function membershipOn(shared: SharedPhone, person: SharedPerson): Promise<Membership> {
  try {
    const [membership] = (await get<SharedMe>(`${API}/me/`)).memberships;
    if (membership) return membership;
  } catch (error) {
    if (!(error instanceof OfflineError) || !shared.known[person.id]) throw error;
  }
  const known = shared.known[person.id];
  if (!known) throw new OfflineError("no-studio");
  return known;
}

/** Nobody holds it: what was read goes, what was made stays. */
export async function putDown(phone: Phone, shared: SharedPhone): Promise<void> {
  setShared({ key: shared.key, memberId: null });
  setLook(SHED, null);
  forgetTouch();
  await dropCaches(phone.db);
  await dropHolder(phone.db);
}

/** An owner signed it off. Its own key still says whose the acts are that had not been sent. */
export async function signedOff(phone: Phone, shared: SharedPhone): Promise<SharedPhone> {
  const gone = { ...shared, people: [], known: {}, isGone: true };
  await putDown(phone, gone);
  await writeShared(phone.db, gone);
  void phone.outbox.wake();
  return gone;
}

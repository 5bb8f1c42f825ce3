/** Signing in and out: the session, the member, and the device this phone is to the studio. */
import { API, ask, get, setDevice } from "../api/client";
import { OfflineError, ProblemError } from "../api/problem";
import type { Me, Membership } from "../api/shapes";
import { dropCaches } from "../offline/cache";
import { deviceIdOf, dropHolder, readHolder, writeDeviceId, writeHolder } from "../offline/holder";
import type { Holder } from "../offline/holder";
import { uuid7 } from "../offline/ids";
import type { Phone } from "../offline/phone";
import { lookOf, PLAIN, setLook, textOf } from "../features/common/look";
import { studioPath } from "../features/common/session";

export function membershipOf(holder: Holder): Membership | null {
  return holder.me.memberships.find((one) => one.studio.slug === holder.slug) ?? holder.me.memberships[0] ?? null;
}

/** Start from what the phone kept; no signal is needed. */
export async function resume(phone: Phone): Promise<Holder | null> {
  const holder = await readHolder(phone.db);
  if (!holder || !membershipOf(holder)) return null;
  setDevice(holder.deviceId);
  void phone.outbox.signIn(holder.me.username);
  return holder;
}

/** Why the studio does not know this phone's session any more. */
export type Out = "signed_out" | "signed_off";

export function outOf(problem: ProblemError): Out | null {
  if (problem.problem.status !== 401) return null;
  return problem.code === "device-signed-off" ? "signed_off" : "signed_out";
}

/** Ask again who this is: the kept holder when there is no answer. */
export async function refresh(phone: Phone, holder: Holder): Promise<Holder | Out> {
  try {
    const me = await get<Me>(`${API}/me/`);
    const known = { ...holder, me };
    if (membershipOf(known)) await writeHolder(phone.db, known);
    return known;
  } catch (error) {
    const out = error instanceof ProblemError ? outOf(error) : null;
    if (out) return out;
    if (error instanceof ProblemError || error instanceof OfflineError) return holder;
    throw error;
  }
}

export async function signIn(phone: Phone, username: string, password: string): Promise<Holder> {
  setDevice(null);
  const me = await ask<Me>({ method: "POST", path: `${API}/session/`, body: { username, password } });
  const before = await readHolder(phone.db);
  return enter(phone, me, before?.me.username === me.username ? before.slug : null);
}

/** Take up work in a studio, by default the first; the phone is made known there once. */
export async function enter(phone: Phone, me: Me, slug: string | null): Promise<Holder> {
  const membership = me.memberships.find((one) => one.studio.slug === slug) ?? me.memberships[0];
  if (!membership) throw new NoStudio();
  setDevice(null);
  const deviceId = await register(phone, me.username, membership);
  setDevice(deviceId);
  takeLook(me.username, membership);
  const holder = { me, slug: membership.studio.slug, deviceId };
  await writeHolder(phone.db, holder);
  phone.tellHolder();
  void phone.outbox.signIn(me.username);
  return holder;
}

export class NoStudio extends Error {
  constructor() {
    super("You are signed in, but belong to no studio yet. Ask an owner for an invitation.");
    this.name = "NoStudio";
  }
}

async function register(phone: Phone, username: string, { studio, member }: Membership): Promise<string> {
  const body = { name: `${member.first_name}’s phone`, happened_at: new Date().toISOString(), based_on: 0 };
  const path = studioPath(studio.slug, "devices/");
  const known = await deviceIdOf(phone.db, studio.slug, username);
  const ids = known ? [known, uuid7()] : [uuid7()];
  for (const id of ids) {
    try {
      await ask({ method: "POST", path, body: { id, ...body } });
      await writeDeviceId(phone.db, studio.slug, username, id);
      return id;
    } catch (error) {
      // A device signed off for good cannot come back; the same phone starts anew under another id.
      if (!(error instanceof ProblemError) || id === ids.at(-1)) throw error;
    }
  }
  throw new Error("There is always a last id.");
}

function takeLook(username: string, { member }: Membership): void {
  const own = lookOf(username);
  setLook(own ?? { ...PLAIN, hand: member.left_handed ? "left" : "right", theme: member.theme, text: textOf(member.text) }, username);
}

/** An owner signed it off: what had not been sent is heard once more, then nothing that was read stays here. */
export async function signedOffForGood(phone: Phone): Promise<void> {
  await phone.outbox.wake();
  await dropCaches(phone.db);
  await dropHolder(phone.db);
}

/** Hand the phone on: the session ends, the read cache goes, and kept acts wait for their own person. */
export async function signOut(phone: Phone): Promise<void> {
  await phone.outbox.signIn(null);
  await dropCaches(phone.db);
  await dropHolder(phone.db);
  phone.tellHolder();
  setDevice(null);
  try {
    await ask({ method: "DELETE", path: `${API}/session/` });
  } catch (error) {
    // Without a signal the cookie stays; the next sign-in replaces it. Nothing of this person is shown meanwhile.
    if (!(error instanceof OfflineError) && !(error instanceof ProblemError)) throw error;
  }
}

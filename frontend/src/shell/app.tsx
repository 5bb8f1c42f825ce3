/** The shell: who holds the phone, what is read and kept for them, and which screen is shown. */
import { PersistQueryClientProvider } from "@tanstack/preact-query-persist-client";
import { ErrorBoundary, LocationProvider, Route, Router, useLocation } from "preact-iso";
import { useEffect, useMemo, useState } from "preact/hooks";
import { SessionContext } from "../features/common/session";
import type { Session } from "../features/common/session";
import { cacheKey, cachePersister } from "../offline/cache";
import { writeHolder } from "../offline/holder";
import type { Holder } from "../offline/holder";
import type { Phone } from "../offline/phone";
import { createReading, followOutbox, isWorthKeeping, KEPT_FOR_MS, SHAPES_VERSION } from "./reading";
import { PLACES, ROUTES } from "./routes";
import { SignIn } from "./sign-in";
import { enter, membershipOf, refresh, resume, signIn, signOut } from "./signing";

export function App({ phone }: { phone: Phone }) {
  const [holder, setHolder] = useState<Holder | null | undefined>(undefined);
  const [isSignedOut, setSignedOut] = useState(false);

  useEffect(() => {
    void resume(phone).then(async (kept) => {
      setHolder(kept);
      if (!kept) return;
      const fresh = await refresh(phone, kept);
      if (fresh) setHolder(fresh);
      else setSignedOut(true);
    });
  }, [phone]);

  const begin = async (username: string, password: string): Promise<void> => {
    setHolder(await signIn(phone, username, password));
    setSignedOut(false);
  };

  if (holder === undefined) return null;
  const kept = phone.outbox.state().acts.filter((act) => act.state === "waiting").length;
  const membership = holder && membershipOf(holder);
  if (!holder || !membership) return <SignIn username="" keptCount={kept} onSignIn={begin} />;

  const session: Session = {
    phone,
    me: holder.me,
    membership,
    deviceId: holder.deviceId,
    places: PLACES,
    isSignedOut,
    enter: async (slug) => { setHolder(await enter(phone, holder.me, slug)); },
    renew: (me) => {
      const known = { ...holder, me };
      setHolder(known);
      void writeHolder(phone.db, known);
    },
    signOut: async () => { await signOut(phone, holder); setHolder(null); },
  };
  return (
    <LocationProvider>
      <SessionContext.Provider value={session}>
        <Reading key={cacheKey(holder.deviceId, membership.member.id)} session={session} onSignedOut={() => { setSignedOut(true); }}>
          <Router>
            {[
              ...ROUTES.map((route) => <Route key={route.path} path={route.path} component={route.screen} />),
              <Route key="/sign-in" path="/sign-in" component={() => <SignInAgain username={holder.me.username} keptCount={kept} onSignIn={begin} />} />,
              <Route key="default" default component={ToFirstPlace} />,
            ]}
          </Router>
        </Reading>
      </SessionContext.Provider>
    </LocationProvider>
  );
}

/** One read cache per device and member; the key above makes a new one when either changes. */
function Reading({ session, onSignedOut, children }: { session: Session; onSignedOut: () => void; children: preact.ComponentChildren }) {
  const { phone, deviceId, membership } = session;
  const [reading] = useState(() => createReading(onSignedOut));
  const persister = useMemo(() => cachePersister(phone.db, cacheKey(deviceId, membership.member.id)), [phone, deviceId, membership.member.id]);
  useEffect(() => followOutbox(reading, phone.outbox, membership.studio.slug), [reading, phone, membership.studio.slug]);
  return (
    <PersistQueryClientProvider client={reading} persistOptions={{ persister, maxAge: KEPT_FOR_MS, buster: SHAPES_VERSION, dehydrateOptions: { shouldDehydrateQuery: isWorthKeeping } }}>
      <ErrorBoundary>{children}</ErrorBoundary>
    </PersistQueryClientProvider>
  );
}

function SignInAgain({ username, keptCount, onSignIn }: { username: string; keptCount: number; onSignIn: (username: string, password: string) => Promise<void> }) {
  const { route } = useLocation();
  return <SignIn username={username} keptCount={keptCount} onSignIn={async (name, password) => { await onSignIn(name, password); route("/bench", true); }} />;
}

/** An address without a screen leads to the first place. */
function ToFirstPlace() {
  const { route } = useLocation();
  useEffect(() => {
    route(PLACES[0]?.href ?? "/more", true);
  }, [route]);
  return null;
}

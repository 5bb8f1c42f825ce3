/** The shell: who holds the phone, what is read and kept for them, and which screen is shown. */
import { PersistQueryClientProvider } from "@tanstack/preact-query-persist-client";
import { ErrorBoundary, LocationProvider, Route, Router, useLocation } from "preact-iso";
import { useCallback, useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { ProblemError } from "../api/problem";
import { SessionContext } from "../features/common/session";
import type { Session } from "../features/common/session";
import { usePin } from "../features/common/use-pin";
import { cacheKey, cachePersister } from "../offline/cache";
import type { Phone } from "../offline/phone";
import { isOfShared, takesPin } from "../offline/shared";
import { createReading, followOutbox, isWorthKeeping, KEPT_FOR_MS, SHAPES_VERSION } from "./reading";
import { PLACES, ROUTES } from "./routes";
import { SignIn } from "./sign-in";
import { SignedOff } from "./signed-off";
import { membershipOf } from "./signing";
import { useHands } from "./use-hands";
import { WhoIsAtWork } from "./who";

export function App({ phone }: { phone: Phone }) {
  const hands = useHands(phone);
  const pin = usePin();
  const { holder, shared } = hands;
  const membership = holder && membershipOf(holder);
  const { ask } = pin;
  const isShared = shared !== null;
  const pinFor = useCallback(
    async (path: string) => (isShared && membership && takesPin(path, membership) ? ask(membership.member.first_name) : null),
    [isShared, membership, ask],
  );

  if (!hands.isReady) return null;
  if (shared?.isGone) return <SignedOff name={shared.name} outbox={phone.outbox} signIn={() => void hands.leaveShared()} />;
  if (shared && !holder) return <WhoIsAtWork shared={shared} outbox={phone.outbox} pick={hands.pick} refresh={hands.askPeople} />;
  const kept = phone.outbox.state().acts.filter((act) => act.state === "waiting" && !isOfShared(act.username)).length;
  if (!holder || !membership) return <SignIn username="" keptCount={kept} isSignedOff={hands.out === "signed_off"} onSignIn={hands.signIn} />;

  const session: Session = {
    phone,
    me: holder.me,
    membership,
    deviceId: holder.deviceId,
    places: PLACES,
    isSignedOut: hands.out !== null,
    enter: hands.enter,
    renew: (me) => { hands.keep({ ...holder, me }); },
    signOut: hands.handOn,
    shared,
    askPin: ask,
    pinFor,
    share: hands.share,
  };
  return (
    <LocationProvider>
      <SessionContext.Provider value={session}>
        <Reading key={cacheKey(holder.deviceId, membership.member.id)} session={session} onProblem={hands.onProblem}>
          <Router>
            {[
              ...ROUTES.map((route) => <Route key={route.path} path={route.path} component={route.screen} />),
              <Route key="/sign-in" path="/sign-in" component={() => <SignInAgain username={holder.me.username} keptCount={kept} onSignIn={hands.signIn} />} />,
              <Route key="default" default component={ToFirstPlace} />,
            ]}
          </Router>
        </Reading>
        {pin.pad}
      </SessionContext.Provider>
    </LocationProvider>
  );
}

/** One read cache per device and member; the key above makes a new one when either changes. */
function Reading({ session, onProblem, children }: { session: Session; onProblem: (error: ProblemError) => void; children: preact.ComponentChildren }) {
  const { phone, deviceId, membership } = session;
  const told = useRef(onProblem);
  told.current = onProblem;
  const [reading] = useState(() => createReading((error) => { told.current(error); }));
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

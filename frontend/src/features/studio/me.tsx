/** How one sees things, when one is left in peace, and what else may speak for one: devices and keys. */
import { useState } from "preact/hooks";
import { Act, Choice, Field } from "../../ui/act";
import { Screen } from "../common/screen";
import type { Look } from "../common/look";
import { useSession } from "../common/session";
import { MyDevices } from "./me-devices";
import { MyTokens } from "./me-tokens";
import css from "./studio.module.css";
import { useMyWays } from "./use-me";
import type { MyWays } from "./use-me";

const THEMES = [{ value: "sun", words: "Sun" }, { value: "shed", words: "Shed" }, { value: "phone", words: "As the phone" }] as const;
const HANDS = [{ value: "right", words: "Right hand" }, { value: "left", words: "Left hand" }] as const;
const SIZES = [{ value: "100", words: "Plain" }, { value: "125", words: "Larger" }, { value: "150", words: "Large" }, { value: "200", words: "Twice" }] as const;
const TEXTS: Record<(typeof SIZES)[number]["value"], Look["text"]> = { "100": 100, "125": 125, "150": 150, "200": 200 };
const BUZZES = [{ value: "no", words: "No buzz" }, { value: "yes", words: "Buzz" }] as const;
const LENGTHS = [{ value: "mm", words: "mm" }, { value: "in", words: "inches" }] as const;
const MASSES = [{ value: "g", words: "g, kg" }, { value: "lb", words: "lb, oz" }] as const;
const TEMPERATURES = [{ value: "c", words: "°C" }, { value: "f", words: "°F" }] as const;

export function MeScreen() {
  const { membership } = useSession();
  const { member } = membership;
  const ways = useMyWays();
  return (
    <Screen title="Me" within="/more" when={`${member.first_name}, ${member.roles.join(", ")}`} isSeam={false}>
      <Act href="/person">Who holds this phone</Act>
      {ways.claim.wrong && <p class={css.wrong} role="alert">{ways.claim.wrong}</p>}
      <MyUnits ways={ways} />
      <MyLook ways={ways} />
      <Quiet ways={ways} />
      <Mail ways={ways} />
      <Pin ways={ways} />
      <MyDevices />
      <MyTokens />
    </Screen>
  );
}

function MyUnits({ ways }: { ways: MyWays }) {
  const { units } = useSession().membership.member;
  return (
    <section class={css.section} aria-label="Units">
      <h2>Units</h2>
      <Choice legend="Lengths" name="length" options={LENGTHS} chosen={units.length} onChoose={(length) => { void ways.change({ units: { length } }); }} />
      <Choice legend="Weights" name="mass" options={MASSES} chosen={units.mass} onChoose={(mass) => { void ways.change({ units: { mass } }); }} />
      <Choice legend="Temperatures" name="temperature" options={TEMPERATURES} chosen={units.temperature} onChoose={(temperature) => { void ways.change({ units: { temperature } }); }} />
    </section>
  );
}

function MyLook({ ways: { look, setMyLook } }: { ways: MyWays }) {
  const size = SIZES.find((option) => TEXTS[option.value] === look.text)?.value ?? "100";
  return (
    <section class={css.section} aria-label="How it looks">
      <h2>How it looks</h2>
      <Choice legend="Light where you stand" name="theme" options={THEMES} chosen={look.theme} onChoose={(theme) => { setMyLook({ theme }); }} />
      <Choice legend="Main act nearest to" name="hand" options={HANDS} chosen={look.hand} onChoose={(hand) => { setMyLook({ hand }); }} />
      <Choice legend="Size of text" name="text" options={SIZES} chosen={size} onChoose={(chosen) => { setMyLook({ text: TEXTS[chosen] }); }} />
      <Choice legend="On an answer" name="buzz" options={BUZZES} chosen={look.hasBuzz ? "yes" : "no"} onChoose={(buzz) => { setMyLook({ hasBuzz: buzz === "yes" }); }} />
    </section>
  );
}

const clockOf = (time: string | null | undefined): string => (time ?? "").slice(0, 5);

function Quiet({ ways }: { ways: MyWays }) {
  const { member } = useSession().membership;
  const [from, setFrom] = useState(clockOf(member.quiet_from));
  const [until, setUntil] = useState(clockOf(member.quiet_until));
  const [isKept, setKept] = useState(false);
  const save = async (): Promise<void> => {
    setKept(await ways.change({ quiet_from: from || null, quiet_until: until || null }));
  };
  return (
    <form class={css.section} aria-label="Quiet hours" onSubmit={(event) => { event.preventDefault(); void save(); }}>
      <h2>Quiet hours</h2>
      <p class={css.note}>Left empty, the studio’s own hold. A kiln that is hot and unread breaks them.</p>
      <div class={css.fields}>
        <Field label="From, as 20:00" name="quiet_from" value={from} onType={(text) => { setFrom(text); setKept(false); }} wrong={ways.claim.wrongAt("#/quiet_from")} />
        <Field label="Until, as 07:30" name="quiet_until" value={until} onType={(text) => { setUntil(text); setKept(false); }} wrong={ways.claim.wrongAt("#/quiet_until")} />
      </div>
      <Act type="submit" isDisabled={ways.claim.isAsking}>{isKept ? "Kept" : "Keep quiet hours"}</Act>
    </form>
  );
}

const MAILS = [{ value: "yes", words: "By e-mail too" }, { value: "no", words: "Only here" }] as const;

function Mail({ ways }: { ways: MyWays }) {
  const { member } = useSession().membership;
  const [email, type] = useState(member.email);
  const [isKept, setKept] = useState(false);
  const save = async (): Promise<void> => { setKept(await ways.change({ email: email.trim() })); };
  return (
    <form class={css.section} aria-label="E-mail" onSubmit={(event) => { event.preventDefault(); void save(); }}>
      <h2>E-mail</h2>
      <Choice legend="Reminders" name="wants_email" options={MAILS} chosen={member.wants_email ? "yes" : "no"} onChoose={(choice) => { void ways.change({ wants_email: choice === "yes" }); }} />
      <Field label="Address" name="email" autocomplete="email" value={email} onType={(text) => { type(text); setKept(false); }} wrong={ways.claim.wrongAt("#/email")} />
      <Act type="submit" isDisabled={ways.claim.isAsking}>{isKept ? "Kept" : "Keep the address"}</Act>
    </form>
  );
}

function Pin({ ways }: { ways: MyWays }) {
  const { member } = useSession().membership;
  const [pin, type] = useState("");
  const save = async (): Promise<void> => {
    if (await ways.change({ pin })) type("");
  };
  return (
    <form class={css.section} aria-label="PIN" onSubmit={(event) => { event.preventDefault(); void save(); }}>
      <h2>PIN for kiln work on a shared phone</h2>
      <p class={css.note}>{member.has_pin ? "You have one. A new one takes its place; an empty one takes it away." : "You have none yet: 4 to 8 figures."}</p>
      <Field label="New PIN" name="pin" type="password" inputMode="numeric" autocomplete="off" value={pin} onType={type} wrong={ways.claim.wrongAt("#/pin")} />
      <Act type="submit" isDisabled={ways.claim.isAsking || (pin === "" && !member.has_pin)}>{pin === "" && member.has_pin ? "Take the PIN away" : "Keep the PIN"}</Act>
    </form>
  );
}

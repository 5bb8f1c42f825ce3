import { useState } from "preact/hooks";
import { OfflineError, ProblemError } from "../api/problem";
import { currentLook, setLook } from "../features/common/look";
import type { Look } from "../features/common/look";
import { Choice, Field, MainAct } from "../ui/act";
import { Body, Frame, StateLine, Title, Tray } from "../ui/frame";
import { NoStudio } from "./signing";

interface SignInProps {
  username: string;
  /** Acts that wait on this phone for somebody to sign in. */
  keptCount: number;
  /** An owner signed this phone off. */
  isSignedOff?: boolean;
  onSignIn: (username: string, password: string) => Promise<void>;
}

const THEMES = [
  { value: "sun", words: "Sun" },
  { value: "shed", words: "Shed" },
  { value: "phone", words: "As the phone" },
] as const;

function whatWentWrong(error: unknown): string {
  if (error instanceof OfflineError) return `${error.message} Signing in needs one; what you have kept stays kept.`;
  if (error instanceof ProblemError && error.retryAfter_s !== null) {
    const minutes = Math.max(1, Math.ceil(error.retryAfter_s / 60));
    return `Too many tries. Wait ${String(minutes)} min, then try again.`;
  }
  if (error instanceof ProblemError || error instanceof NoStudio) return error.message;
  throw error;
}

export function SignIn({ username: known, keptCount, isSignedOff = false, onSignIn }: SignInProps) {
  const [username, setUsername] = useState(known);
  const [password, setPassword] = useState("");
  const [isAsking, setAsking] = useState(false);
  const [wrong, setWrong] = useState<string | null>(null);
  const [theme, setTheme] = useState<Look["theme"] | null>(null);

  const submit = async (): Promise<void> => {
    setAsking(true);
    setWrong(null);
    try {
      await onSignIn(username.trim(), password);
      // Signing in brings the look one had; the light chosen here is of now, and stands.
      if (theme) setLook({ ...currentLook(), theme }, username.trim());
    } catch (error) {
      setWrong(whatWentWrong(error));
    } finally {
      setAsking(false);
    }
  };

  return (
    <form onSubmit={(event) => { event.preventDefault(); void submit(); }}>
      <Frame>
        <Title name="Natch" when="sign in" />
        {keptCount > 0 && <StateLine count={keptCount}><b>kept on this phone</b> · sent when you sign in</StateLine>}
        <Body isSeam={false}>
          {isSignedOff && <p><b>This phone was signed off.</b> What had been read here is gone from it; what was made here and not sent stays, photos too.</p>}
          <Field label="Name" name="username" value={username} onType={setUsername} autocomplete="username" />
          <Field label="Password" name="password" type="password" value={password} onType={setPassword} autocomplete="current-password" wrong={wrong} />
          <Choice
            legend="Light where you stand" name="theme" options={THEMES} chosen={theme ?? currentLook().theme}
            onChoose={(chosen) => { setTheme(chosen); setLook({ ...currentLook(), theme: chosen }, null); }}
          />
        </Body>
        <Tray>
          <MainAct type="submit" isDisabled={isAsking || username === "" || password === ""}>{isAsking ? "Asking" : "Sign in"}</MainAct>
        </Tray>
      </Frame>
    </form>
  );
}

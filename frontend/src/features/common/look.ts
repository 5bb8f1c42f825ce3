/** How the phone looks to the hand that holds it: light, hand, size of text, a buzz. Kept per person on this phone. */

export interface Look {
  theme: "sun" | "shed" | "phone";
  hand: "right" | "left";
  text: 100 | 125 | 150 | 200;
  hasBuzz: boolean;
}

const TEXTS: readonly Look["text"][] = [100, 125, 150, 200];

/** The size nearest to what the studio keeps for the person. */
export function textOf(percent: number): Look["text"] {
  return TEXTS.find((size) => size >= percent) ?? 200;
}

export const PLAIN: Look = { theme: "phone", hand: "right", text: 100, hasBuzz: false };
const CURRENT = "natch.look";

const BARS = { sun: "#F3F6F5", shed: "#14130F" } as const;

function readFrom(key: string): Partial<Look> | null {
  try {
    // Written by `setLook` alone; a field that is missing falls to the plain look.
    return JSON.parse(localStorage.getItem(key) ?? "null") as Partial<Look> | null;
  } catch {
    return null;
  }
}

export function currentLook(): Look {
  return { ...PLAIN, ...readFrom(CURRENT) };
}

/** The look this person last chose on this phone, or null when they never did. */
export function lookOf(username: string): Look | null {
  const kept = readFrom(`${CURRENT}:${username}`);
  return kept && { ...PLAIN, ...kept };
}

export function setLook(look: Look, username: string | null): void {
  const text = JSON.stringify(look);
  localStorage.setItem(CURRENT, text);
  if (username) localStorage.setItem(`${CURRENT}:${username}`, text);
  const { dataset } = document.documentElement;
  if (look.theme === "phone") delete dataset["theme"];
  else dataset["theme"] = look.theme;
  dataset["hand"] = look.hand;
  dataset["text"] = String(look.text);
  const isDark = look.theme === "shed" || (look.theme === "phone" && matchMedia("(prefers-color-scheme: dark)").matches);
  document.querySelector('meta[name="theme-color"]')?.setAttribute("content", isDark ? BARS.shed : BARS.sun);
}

/** A 20 ms buzz on an answer, for those who asked for one. */
export function buzz(): void {
  if (currentLook().hasBuzz && "vibrate" in navigator) navigator.vibrate(20);
}

/** Asks for a PIN over whatever screen is shown, one at a time. */
import type { ComponentChild } from "preact";
import { useCallback, useState } from "preact/hooks";
import { PinPad } from "./pin-pad";

interface Asked {
  name: string;
  answer: (pin: string | null) => void;
}

export function usePin(): { ask: (name: string) => Promise<string | null>; pad: ComponentChild } {
  const [asked, show] = useState<Asked | null>(null);
  const ask = useCallback((name: string) => new Promise<string | null>((resolve) => {
    show({ name, answer: (pin) => { show(null); resolve(pin); } });
  }), []);
  return { ask, pad: asked && <PinPad key={asked.name} name={asked.name} answer={asked.answer} /> };
}

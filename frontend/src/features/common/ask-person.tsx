/** Ask somebody, by whatever this phone writes to people with: a ready text, shared or copied. Natch sends nothing in a person's name. */
import { useState } from "preact/hooks";
import { Fact } from "../../ui/seam";

export interface Asking {
  /** What became of it; null before it was tried. */
  words: string | null;
  ask: () => void;
}

/** A share that was broken off is no fault, and nothing is copied behind one's back then. */
export function useAsking(text: string): Asking {
  const [words, say] = useState<string | null>(null);
  const ask = async (): Promise<void> => {
    try {
      if ("share" in navigator) {
        await navigator.share({ text });
        return;
      }
    } catch (error) {
      if (error instanceof DOMException && error.name === "AbortError") return;
    }
    try {
      await (navigator as Partial<Navigator>).clipboard?.writeText(text);
      say("clipboard" in navigator ? "Copied: paste it where you write to them" : "Copy it, and send it where you write to them");
    } catch {
      say("Copy it, and send it where you write to them");
    }
  };
  return { words, ask: () => void ask() };
}

export function AskedText({ text, asking: { words } }: { text: string; asking: Asking }) {
  if (words === null) return null;
  return <div role="status"><Fact label="to send" natch="hand" value={words} note={text} /></div>;
}

import { useEffect, useState } from "preact/hooks";

/** A thumb goes on typing; asking begins when it rests. [ms] */
const REST_MS = 300;

/** The letters once no more were typed for a moment. */
export function useRested(letters: string): string {
  const [rested, rest] = useState(letters);
  useEffect(() => {
    const timer = setTimeout(() => { rest(letters); }, REST_MS);
    return () => { clearTimeout(timer); };
  }, [letters]);
  return rested;
}

import { useEffect, useRef, useState } from "preact/hooks";

export interface Box {
  width: number;
  /** The reader's own text size. [px] */
  rem: number;
}

/** How wide the element is and how large the reader's text, again when either changes. */
export function useBox<Kind extends Element>(): { ref: { current: Kind | null }; box: Box } {
  const ref = useRef<Kind | null>(null);
  const [box, setBox] = useState<Box>({ width: 328, rem: 16 });
  useEffect(() => {
    const element = ref.current;
    if (!element) return undefined;
    const read = (): void => {
      const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
      const width = Math.round(element.getBoundingClientRect().width);
      if (width > 0) setBox((now) => (now.width === width && now.rem === rem ? now : { width, rem }));
    };
    read();
    const watch = new ResizeObserver(read);
    watch.observe(element);
    return () => { watch.disconnect(); };
  }, []);
  return { ref, box };
}

import { useEffect, useState } from "preact/hooks";

/** The phone's time, again every `every_s` seconds and whenever the phone is woken. */
export function useNow(every_s = 20): Date {
  const [now, setNow] = useState(() => new Date());
  useEffect(() => {
    const read = (): void => {
      setNow(new Date());
    };
    const timer = setInterval(read, every_s * 1000);
    document.addEventListener("visibilitychange", read);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", read);
    };
  }, [every_s]);
  return now;
}

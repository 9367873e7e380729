/** The time of day as the page draws it, moved on every few seconds and when the page comes back into sight. */
import { useEffect, useState } from 'react';

/** Seconds from one drawing to the next. */
const EVERY = 5;

/** ms since 1970. */
export function useNow(): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const draw = () => setNow(Date.now());
    const timer = setInterval(draw, EVERY * 1000);
    document.addEventListener('visibilitychange', draw);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', draw);
    };
  }, []);
  return now;
}

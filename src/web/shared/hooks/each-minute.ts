/** Draws anew each minute: a page that stands open overnight shows the new day. */
import { useEffect, useReducer } from 'react';

export function useEachMinute(): void {
  const [, redraw] = useReducer((n: number) => n + 1, 0);
  useEffect(() => {
    const timer = setInterval(redraw, 60_000);
    return () => clearInterval(timer);
  }, []);
}

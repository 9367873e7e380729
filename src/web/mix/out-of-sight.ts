/** Whether an element has been scrolled out of the window. */
import { type RefObject, useEffect, useState } from 'react';

export function useOutOfSight(element: RefObject<Element | null>): boolean {
  const [gone, setGone] = useState(false);
  useEffect(() => {
    if (!element.current) return;
    const watch = new IntersectionObserver(([seen]) => setGone(seen !== undefined && !seen.isIntersecting));
    watch.observe(element.current);
    return () => watch.disconnect();
  }, [element]);
  return gone;
}

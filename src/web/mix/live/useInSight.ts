import { useCallback, useState } from 'react';

/** What is about to be scrolled into sight counts as in it, pixels. */
const NEAR = '200px 0px';

/**
 * Whether an element can be seen, or nearly: what cannot need not follow each frame of a dragged slider.
 * @returns whether, and the `ref` for the element; one that was never watched counts as seen
 */
export function useInSight(): readonly [boolean, (element: Element | null) => (() => void) | undefined] {
  const [seen, setSeen] = useState(true);
  const watch = useCallback((element: Element | null) => {
    if (!element) return undefined;
    const observer = new IntersectionObserver(
      (entries) => setSeen(entries.at(-1)?.isIntersecting !== false),
      { rootMargin: NEAR },
    );
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [seen, watch];
}

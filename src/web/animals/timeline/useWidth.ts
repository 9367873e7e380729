/** How wide a picture's place is, so that its letters are as large in a narrow window as in a wide one. */
import { type RefObject, useEffect, useRef, useState } from 'react';

/** px before the place has been measured: a phone's. */
const NARROW = 340;

export function useWidth<T extends HTMLElement>(): [RefObject<T | null>, number] {
  const place = useRef<T>(null);
  const [width, setWidth] = useState(NARROW);
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    const watch = new ResizeObserver(() => setWidth(Math.max(200, Math.floor(element.clientWidth))));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return [place, width];
}

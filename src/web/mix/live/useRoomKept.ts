import { type RefObject, useLayoutEffect } from 'react';

/** While a hand moves a slider an element gives up none of its height: what stands below it would move under the hand. */
export function useRoomKept(element: RefObject<HTMLElement | null>, moving: boolean): void {
  useLayoutEffect(() => {
    const kept = element.current;
    if (!moving || !kept) return;
    kept.style.minHeight = `${kept.offsetHeight}px`;
    return () => {
      kept.style.minHeight = '';
    };
  }, [element, moving]);
}

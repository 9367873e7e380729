import { useRef } from 'react';

/**
 * What stood last while no slider moved: for what is drawn of a mix beside its shares and ranges, and would hold up the next
 * frame of a dragged slider. It follows when the slider is let go.
 */
export function useStill<T>(value: T, moving: boolean): T {
  const still = useRef(value);
  if (!moving) still.current = value;
  return still.current;
}

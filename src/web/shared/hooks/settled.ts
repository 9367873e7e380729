/** A value once it has stood still: for work too heavy, or too talkative, to follow every key. */
import { useEffect, useState } from 'react';

/**
 * The value as it last stood still for `wait` milliseconds, and a function that takes it as it is now.
 */
export function useSettled<T>(value: T, wait: number): readonly [settled: T, settleNow: () => void] {
  const [settled, settle] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => settle(value), wait);
    return () => clearTimeout(timer);
  }, [value, wait]);
  return [settled, () => settle(value)];
}

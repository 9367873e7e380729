/**
 * A line that goes while a finger or button is down keeps its place until the press is over: else what is pressed would
 * move away from under it, and the press would be lost.
 */
import { useEffect, useState } from 'react';

/** The press as such is over with the click, which on touch comes a little after the finger is lifted, ms. */
const AFTER_LIFT = 100;

let pressed = false;
const listeners = new Set<() => void>();

function release(): void {
  pressed = false;
  for (const listener of [...listeners]) listener();
}

if (typeof document === 'object') {
  document.addEventListener('pointerdown', () => (pressed = true), true);
  document.addEventListener('pointerup', () => setTimeout(release, AFTER_LIFT), true);
  document.addEventListener('pointercancel', release, true);
}

/** What stood in the line last, for as long as its place is to be kept; empty afterwards. @param line as it is now */
export function useHeldLine(line: string): string {
  const [held, hold] = useState(line);
  useEffect(() => {
    if (line !== '' || !pressed) {
      hold(line);
      return;
    }
    const over = () => hold('');
    listeners.add(over);
    return () => {
      listeners.delete(over);
    };
  }, [line]);
  return held;
}

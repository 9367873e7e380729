/** What is heard of a long answer, shown no more often than can be read. */
import { useCallback, useEffect, useRef, useState } from 'react';
import type { Progress } from '../../../formulation/problem/progress.ts';

/** The least time between two things that are shown, ms; what is answered sooner shows nothing on its way. */
const READABLE = 200;

interface Heard<F> {
  /** What was heard last of the answer to `key`, as it is shown. */
  shown(key: string): Progress<F> | undefined;
  /** The same, also where it is too new to be shown. */
  newest(key: string): Progress<F> | undefined;
  hear(key: string, told: Progress<F>): void;
}

export function useHeard<F>(): Heard<F> {
  const last = useRef<{ key: string; told: Progress<F> } | undefined>(undefined);
  const [shown, show] = useState<{ key: string; told: Progress<F> }>();
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(
    () => () => {
      clearTimeout(timer.current);
      timer.current = undefined;
    },
    [],
  );
  const hear = useCallback((key: string, told: Progress<F>) => {
    const before = last.current;
    // A step in which nothing is said of what was found has found nothing new.
    const found = told.found ?? (before?.key === key ? before.told.found : undefined);
    last.current = { key, told: found === undefined ? told : { ...told, found } };
    timer.current ??= setTimeout(() => {
      timer.current = undefined;
      show(last.current);
    }, READABLE);
  }, []);
  const newest = useCallback(
    (key: string) => (last.current?.key === key ? last.current.told : undefined),
    [],
  );
  return { shown: (key) => (shown?.key === key ? shown.told : undefined), newest, hear };
}

/**
 * Shares that a hand has moved to: shown at once, and kept when it lets go. To keep a mix is to merge it, write it down and
 * send it, which no frame of a dragged slider has the time for.
 */
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Shares } from '../../../formulation/problem/problem.ts';
import type { Mix } from '../../../household/model.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { withShares } from './moves.ts';

interface Unkept {
  /** Shares of foods that are not kept yet, percent by id; undefined where all is kept. */
  readonly unkept: Shares | undefined;
  /** The mix as it is shown this moment. */
  current(): Mix | undefined;
  /** Changes the mix, and keeps what was shown before. */
  change(next: (mix: Mix) => Mix, step?: string): void;
  /** @param step changes of the same step made close together are undone together */
  show(shares: Shares, step: string): void;
  /** Keeps what is shown. */
  keep(): void;
}

export function useUnkept(): Unkept {
  const { change: changeKept, current: kept } = useMixDraft();
  const [unkept, setUnkept] = useState<Shares>();
  const now = useRef<{ readonly shares: Shares; readonly step: string }>(undefined);

  const keep = useCallback(() => {
    if (!now.current) return;
    const { shares, step } = now.current;
    now.current = undefined;
    setUnkept(undefined);
    changeKept((mix) => withShares(mix, shares), step);
  }, [changeKept]);
  const current = useCallback(() => {
    const mix = kept();
    return mix && now.current ? withShares(mix, now.current.shares) : mix;
  }, [kept]);
  const change = useCallback(
    (next: (mix: Mix) => Mix, step?: string) => {
      keep();
      changeKept(next, step);
    },
    [keep, changeKept],
  );
  const show = useCallback(
    (shares: Shares, step: string) => {
      if (now.current?.step !== step) keep();
      now.current = { shares: { ...now.current?.shares, ...shares }, step };
      setUnkept(now.current.shares);
    },
    [keep],
  );

  // Nothing is lost where the screen or the page is left with the hand still on the slider.
  useEffect(() => {
    const left = () => document.visibilityState === 'hidden' && keep();
    window.addEventListener('pagehide', keep, { capture: true });
    document.addEventListener('visibilitychange', left);
    return () => {
      window.removeEventListener('pagehide', keep, { capture: true });
      document.removeEventListener('visibilitychange', left);
      keep();
    };
  }, [keep]);

  return useMemo(() => ({ unkept, current, change, show, keep }), [unkept, current, change, show, keep]);
}

/** Whole grams of a mix, worked out once it stands still. */
import { useEffect, useState } from 'react';
import type { WholeGrams } from '../../../formulation/problem/result.ts';
import type { Mix } from '../../../household/model.ts';
import { useEngine } from '../../worker/engine.ts';

/** How long a mix must stand still, ms: longer than a dragged slider rests between two moves. */
const MIX_STILL_MS = 220;

/** Whole steps of the scale; undefined while they are worked out, and for a mix out of range. */
export function useGrams(
  { problem, shares }: Pick<Mix, 'problem' | 'shares'>,
  fits: boolean,
): WholeGrams | undefined {
  const [weighed, setWeighed] = useState<WholeGrams>();
  const engine = useEngine();
  // Grams of other shares are worse than none, so the old ones go at once.
  useEffect(() => {
    setWeighed(undefined);
    if (!fits) return;
    let stale = false;
    const timer = setTimeout(async () => {
      const answer = await engine.grams(problem, shares).catch(() => undefined);
      if (!stale && answer?.ok) setWeighed(answer.value);
    }, MIX_STILL_MS);
    return () => {
      stale = true;
      clearTimeout(timer);
    };
  }, [problem, shares, fits, engine]);
  return weighed;
}

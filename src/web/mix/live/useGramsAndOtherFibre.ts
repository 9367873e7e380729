/** What is worked out once the mix stands still: its grams, and its fibre read the other way. */
import { useEffect, useState } from 'react';
import type { Evaluation, WholeGrams } from '../../../formulation/problem/result.ts';
import type { Mix } from '../../../household/model.ts';
import { withOtherFibre } from '../../../household/reckon/mix/mix-edits.ts';
import { engine } from '../../worker/engine.ts';

/** What the fibre rules would say under the other fibre measure. */
export interface OtherFibre {
  readonly tag: 'FIBTG' | 'FIBC';
  /** g per 100 g of the ration; undefined where nothing is known of it. */
  readonly ration: number | undefined;
  readonly fits: boolean;
}

type At = Pick<Mix, 'problem' | 'shares'>;

/** How long a mix must stand still, ms: longer than a dragged slider rests between two moves. */
const MIX_STILL_MS = 220;

/** Whole steps of the scale; undefined while they are worked out, and for a mix out of range. */
export function useGrams({ problem, shares }: At, fits: boolean): WholeGrams | undefined {
  const [weighed, setWeighed] = useState<WholeGrams>();
  // Grams of other shares are worse than none, so the old ones go at once.
  useEffect(() => {
    setWeighed(undefined);
    if (!fits) return;
    return atRest(
      async () => engine.grams(problem, shares),
      (answer) => answer?.ok && setWeighed(answer.value),
    );
  }, [problem, shares, fits]);
  return weighed;
}

/** Undefined where no rule names fibre; the last reading stays until the next is there. */
export function useOtherFibre({ problem, shares }: At): OtherFibre | undefined {
  const [reading, setReading] = useState<OtherFibre>();
  // The rules are rewritten to the other measure, and the same shares judged by them.
  useEffect(() => {
    const swapped = withOtherFibre(problem);
    return atRest(
      async () => swapped && engine.evaluate(swapped.problem, shares),
      (answer) =>
        setReading(
          swapped && answer?.ok ? readingOf(answer.value, swapped.other, swapped.pointers) : undefined,
        ),
    );
  }, [problem, shares]);
  return reading;
}

function readingOf(e: Evaluation, tag: OtherFibre['tag'], pointers: readonly string[]): OtherFibre {
  return {
    tag,
    ration: e.nutrients[tag]?.ration,
    fits: !e.breaches.some((b) => pointers.some((p) => `${b.pointer}/`.startsWith(p))),
  };
}

/** Asks once the mix has stood still. @returns what calls it off @param tell undefined where the worker failed */
function atRest<T>(ask: () => Promise<T>, tell: (answer: T | undefined) => void): () => void {
  let stale = false;
  const timer = setTimeout(async () => {
    const answer = await ask().catch(() => undefined);
    if (!stale) tell(answer);
  }, MIX_STILL_MS);
  return () => {
    stale = true;
    clearTimeout(timer);
  };
}

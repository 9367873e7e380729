/** What is due of animals and batches, worked out once for all parts of the page. */
import { useEffect, useMemo } from 'react';
import { type CareDue, careDue } from '../../household/reckon/care/due.ts';
import { mayBeFed } from '../../household/reckon/care/present-batches.ts';
import type { Day } from '../../kitchen/model.ts';
import { useCircumstancesFor } from '../shared/hooks/useCircumstances.ts';
import { isComing, later } from '../shared/later/later.ts';
import { dayAt } from '../shared/today.ts';
import { useHousehold } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

/** What follows from weights is fetched where there are any. */
const weights = later(() =>
  import('../../household/reckon/care/weight-of.ts').then(({ weightsOf }) => weightsOf),
);
const NO_WEIGHTS = () => ({ alerts: [], points: [] });

/** Throws, where it does, in the part of the page that asks. Undefined while what is fed is still worked out. */
export type AskDue = () => CareDue | undefined;

export function useCareDue(day: Day): AskDue {
  const { house } = useMixDraft();
  const { isWhole } = useHousehold();
  useEffect(() => {
    // Weighings that are still on their way are many: what follows from them comes beside them, not after.
    if (!isWhole) weights.fetch().catch(() => {});
  }, [isWhole]);
  const { animals, batches } = house;
  const problems = useMemo(() => {
    const under = { today: day, dayAt };
    return once(() => mayBeFed({ animals, batches }, under).map(({ batch }) => batch.problem));
  }, [animals, batches, day]);
  const circumstances = useCircumstancesFor(orNone(problems), day);
  return useMemo(
    () =>
      once(() => {
        problems();
        if (!circumstances) return undefined;
        const weightsOf = house.weighings.length > 0 ? weights.now() : NO_WEIGHTS;
        return careDue(house, { ...circumstances, weightsOf });
      }),
    [house, circumstances, problems],
  );
}

/** The answer, or the fault, of the first time. */
function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | { readonly fault: unknown } | undefined;
  return () => {
    if (!done)
      try {
        done = { value: work() };
      } catch (fault) {
        if (isComing(fault)) throw fault;
        done = { fault };
      }
    if ('fault' in done) throw done.fault;
    return done.value;
  };
}

function orNone<T>(ask: () => readonly T[]): readonly T[] {
  try {
    return ask();
  } catch (fault) {
    if (isComing(fault)) throw fault;
    return [];
  }
}

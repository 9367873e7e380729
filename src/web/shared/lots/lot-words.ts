/** How a lot stands, in a few words that stand for themselves. */
import type { LotState } from '../../../household/reckon/cupboard/lot-state.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import type { Day, Lot } from '../../../kitchen/model.ts';

/** @param state of the lot on `day` */
export function lotWords(lot: Lot, state: LotState, day: Day): string {
  if (lot.barred) return `barred, ${lot.barred.why}`;
  if (state.kind === 'empty') return 'used up';
  if (state.kind === 'fresh') return 'fresh: to be dried';
  const also =
    state.pastBest && lot.bestBefore !== undefined
      ? `; past its best before, ${dayInWords(lot.bestBefore, day)}`
      : '';
  if (state.kind === 'ready' || state.kind === 'past')
    return `${state.overruled ? 'ready, the cold overruled' : 'ready'}${also}`;
  return `${treatmentWords(state, day)}${also}`;
}

function treatmentWords({ kind, step, readyOn }: LotState, day: Day): string {
  const ready = readyOn === undefined ? '' : dayInWords(readyOn, day);
  if (!step) return readyOn === undefined ? 'waits for the cold: no dates yet' : `in the cold until ${ready}`;
  if (kind === 'waits') {
    const waits = step.kind === 'freeze' ? 'waits for the freezer: goes in' : 'waits to thaw: comes out';
    return `${waits} on ${dayInWords(step.from, day)}`;
  }
  const what = step.kind === 'freeze' ? 'in the freezer' : 'thawing';
  if (kind === 'due') return `${what} long enough: tick it off`;
  const then = readyOn === step.to ? 'then ready' : `ready on ${ready}`;
  return `${what} until ${dayInWords(step.to, day)}, ${then}`;
}

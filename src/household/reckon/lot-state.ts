/** How a lot stands on a day: ready to weigh out, in its freeze treatment, barred, used up. */
import type { FoodGroup } from '../../foods/food.ts';
import type { Left } from '../../kitchen/cupboard/cupboard.ts';
import { dayInWords } from '../../kitchen/days.ts';
import {
  mayBeWeighed,
  needsTreatment,
  readyOn,
  treatmentDone,
} from '../../kitchen/freezing/freeze-treatment.ts';
import type { Day, Lot } from '../../kitchen/model.ts';

/**
 * "ready" and "past" (past its best before, to be looked at) may be weighed out; "cold": in the freezer or thawing;
 * "due": a step is over and not ticked off; "waits": the cold is still to begin, or no dates are planned.
 */
export type LotStateKind = 'ready' | 'past' | 'cold' | 'due' | 'waits' | 'fresh' | 'barred' | 'empty';

export interface LotState {
  readonly kind: LotStateKind;
  /** A few words that stand for themselves. */
  readonly words: string;
}

/** The state of a lot on `day`. @param group of its food; see `needsCold` */
export function lotState({ lot, grams }: Left, day: Day, group?: FoodGroup): LotState {
  if (lot.barred) return { kind: 'barred', words: `barred, ${lot.barred.why}` };
  if (grams === 0) return { kind: 'empty', words: 'used up' };
  if (lot.form === 'fresh') return { kind: 'fresh', words: 'fresh: to be dried' };
  const past = lot.bestBefore !== undefined && lot.bestBefore < day;
  const also = past ? `; past its best before, ${dayInWords(lot.bestBefore!, day)}` : '';
  if (mayBeWeighed(lot, day, group).ok) {
    const overruled = lot.overruled && waitsForCold(lot, day, group) ? 'ready, the cold overruled' : 'ready';
    return past ? { kind: 'past', words: `${overruled}${also}` } : { kind: 'ready', words: overruled };
  }
  return { ...coldState(lot, day), words: `${coldState(lot, day).words}${also}` };
}

export function coldState(lot: Lot, day: Day): LotState {
  const step = lot.cold.find((each) => each.doneOn === undefined);
  if (!step)
    return lot.cold.length === 0
      ? { kind: 'waits', words: 'waits for the cold: no dates yet' }
      : { kind: 'cold', words: `in the cold until ${dayInWords(readyOn(lot)!, day)}` };
  if (step.from > day)
    return {
      kind: 'waits',
      words: `${step.kind === 'freeze' ? 'waits for the freezer: goes in' : 'waits to thaw: comes out'} on ${dayInWords(step.from, day)}`,
    };
  const what = step.kind === 'freeze' ? 'in the freezer' : 'thawing';
  if (step.to <= day) return { kind: 'due', words: `${what} long enough: tick it off` };
  const ready = readyOn(lot)!;
  const then = ready === step.to ? 'then ready' : `ready on ${dayInWords(ready, day)}`;
  return { kind: 'cold', words: `${what} until ${dayInWords(step.to, day)}, ${then}` };
}

export function waitsForCold(lot: Lot, day: Day, group: FoodGroup | undefined): boolean {
  return (lot.cold.length > 0 || needsTreatment(lot, group).needs) && !treatmentDone(lot, day);
}

/**
 * When an animal is to be weighed again. Common practice, no source: every week, more often where a change is to be seen
 * early. A mother with a nest is left in peace.
 */
import type { Condition } from '../../../care/model.ts';
import { daysBetween } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { Animal } from '../../model.ts';

/** Why as often as that; the most pressing reason of several. */
export type WeighReason = 'alert' | 'ill' | 'young' | 'trial' | 'change' | 'old' | 'weekly';

/** Days from one weighing to the next. Common practice, no source. */
const EVERY: Readonly<Record<WeighReason, number>> = {
  alert: 1,
  ill: 3,
  young: 3,
  trial: 3,
  change: 3,
  old: 4,
  weekly: 7,
};

/** Whoever has not weighed for longer than that does not do so any more, days; our own choice, no source. */
const GIVEN_UP = 28;

/** Younger than this it grows from day to day, days; from memory, for hamsters. */
const YOUNG = 84;

export interface WeighDue {
  /** "due": the keeper weighs it, and it is time; "offer": the keeper does not, and there is a reason to; "no": neither. */
  readonly is: 'due' | 'offer' | 'no';
  readonly why: WeighReason;
  /** Days from one weighing to the next. */
  readonly every: number;
  /** The day of the last one. */
  readonly last?: Day;
}

/**
 * @param p.last the day on which it was last weighed @param p.alert its weight is an alarm now
 * @param p.trial a new food is tried with it @param p.change it changes over to a new batch
 */
export function weighDue(
  animal: Pick<Animal, 'lifeStage' | 'born' | 'conditions'>,
  p: {
    readonly today: Day;
    readonly last: Day | undefined;
    readonly alert: boolean;
    readonly trial: boolean;
    readonly change: boolean;
  },
): WeighDue {
  const why = reasonOf(animal, p);
  const every = EVERY[why];
  const { last, today } = p;
  const days = last === undefined ? undefined : daysBetween(last, today);
  const answer = (is: WeighDue['is']): WeighDue => ({ is, why, every, ...(last !== undefined && { last }) });
  if (hasNest(animal, today)) return answer('no');
  if (days !== undefined && days < every) return answer('no');
  if (days !== undefined && days <= GIVEN_UP) return answer('due');
  return answer(why === 'weekly' ? 'no' : 'offer');
}

function reasonOf(
  { lifeStage, born, conditions = [] }: Pick<Animal, 'lifeStage' | 'born' | 'conditions'>,
  p: { readonly today: Day; readonly alert: boolean; readonly trial: boolean; readonly change: boolean },
): WeighReason {
  const now = conditions.filter((c) => holds(c, p.today)).map((c) => c.what);
  if (p.alert) return 'alert';
  if (now.some((what) => what === 'diabetes' || what === 'teeth' || what === 'weight' || what === 'other'))
    return 'ill';
  if (lifeStage === 'growing' || (born && daysBetween(born.on, p.today) < YOUNG)) return 'young';
  if (p.trial) return 'trial';
  if (p.change) return 'change';
  if (lifeStage === 'old' || now.includes('old')) return 'old';
  return 'weekly';
}

/** Nursing, or a breeding animal of which nobody has said that it is only pregnant. */
function hasNest({ lifeStage, conditions = [] }: Pick<Animal, 'lifeStage' | 'conditions'>, on: Day): boolean {
  const now = conditions.filter((c) => holds(c, on)).map((c) => c.what);
  return now.includes('nursing') || (lifeStage === 'breeding' && !now.includes('pregnant'));
}

function holds({ since, until }: Condition, on: Day): boolean {
  return since <= on && (until === undefined || until >= on);
}

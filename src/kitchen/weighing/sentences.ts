/** What is said beside the scale. */
import { words } from '../../words/words.ts';
import { NEAR_STEP } from '../tolerances.ts';
import type { ChangedTarget, WeighState } from './weigh-state.ts';

export function changed(c: {
  name: string;
  from: number;
  to: number;
  again: boolean;
  inBowl: number;
}): string {
  const t = words().weighing.changed;
  if (c.again) return t.more(c.name, c.to - c.inBowl);
  return c.to === 0 ? t.leftOut(c.name, c.from) : t.instead(c.name, c.to, c.from);
}

export function poured(told: {
  food: string;
  grams: number;
  changed: readonly ChangedTarget[];
  state: WeighState;
  planned: number;
}): string {
  const t = words().weighing.after;
  const { food, grams, state } = told;
  const what = grams < 0 ? t.takenOut(food, -grams) : grams === 0 ? t.leftOut(food) : t.poured(food, grams);
  const others = told.changed.length;
  const again = told.changed.some((c) => c.again);
  if (state.lost) return t.lost(what);
  if (state.asked) return t.asked(what);
  if (state.done) return t.done(what, state.total);
  if (state.status === 'grown') return t.grown(what, others, again, state.total, told.planned);
  return t.goesOn(what, others, again);
}

export function spoonBack(name: string, out: number): string {
  return words().weighing.spoonBack(name, out);
}

export function lost(missed: readonly { sentence: string }[]): string {
  const t = words().weighing.lost;
  if (missed.length === 0) return t.noSteps;
  return [t.sentence, ...missed.map((m) => m.sentence)].join(' ');
}

export function larger(total: number, needed: readonly { name: string; grams: number }[]): string {
  const t = words().weighing.lost;
  const grams = Math.ceil(total - NEAR_STEP);
  return needed.length === 0 ? t.larger(grams) : t.largerWith(grams, needed);
}

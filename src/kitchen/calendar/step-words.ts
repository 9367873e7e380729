/** What the steps of a kitchen plan are called. */

import { words } from '../../words/words.ts';
import type { PlannedStep } from './kitchen-plan.ts';
import type { StepKind } from './step-days.ts';

/** "weigh out": what is done in a step. */
export function stepWord(kind: StepKind): string {
  return words().steps.step[kind];
}

/** "freeze 1", "weigh out". */
export function shortTitle({ kind, round }: Pick<PlannedStep, 'kind' | 'round'>): string {
  return round ? words().steps.numbered(stepWord(kind), round.number) : stepWord(kind);
}

/** "freeze (1 of 2): oats, millet": what is done, and with what; at most three foods are named. */
export function stepTitle({ kind, round, supply, goods }: PlannedStep): string {
  const t = words().steps;
  const what = round ? t.numberedOf(stepWord(kind), round.number, round.of) : stepWord(kind);
  if (supply === undefined) return what;
  // A food of which there are several packs is named once.
  const foods = [...new Set(goods.map((g) => g.name))];
  const names = foods.slice(0, 3);
  const more = foods.length - names.length;
  return t.with(what, more > 0 ? t.namedAndMore(names.join(', '), more) : names.join(', '));
}

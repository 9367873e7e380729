/** What the steps of a kitchen plan are called. */

import type { PlannedStep } from './kitchen-plan.ts';
import type { StepKind } from './step-days.ts';

/** What a step is called. */
export const STEP_WORDS: Readonly<Record<StepKind, string>> = {
  buy: 'buy',
  freeze: 'freeze',
  thaw: 'thaw',
  dry: 'dry',
  weigh: 'weigh out',
  'change-over': 'change over',
};

/** "freeze (1 of 2): oats, millet": what is done, and with what; at most three foods are named. */
export function stepTitle({ kind, round, supply, goods }: PlannedStep): string {
  const what = round ? `${STEP_WORDS[kind]} (${round.number} of ${round.of})` : STEP_WORDS[kind];
  if (supply === undefined) return what;
  const names = goods.slice(0, 3).map((g) => g.name);
  const more = goods.length - names.length;
  return `${what}: ${names.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
}

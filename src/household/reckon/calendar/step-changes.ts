/** What a move of one step changed in the calendar, and a sentence that says it. */
import { capital, joined } from '../../../formulation/explain/sentences.ts';
import type { KitchenPlan, PlannedStep } from '../../../kitchen/calendar/kitchen-plan.ts';
import { STEP_WORDS, stepTitle } from '../../../kitchen/calendar/step-words.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { BatchCalendar } from './batch-calendar.ts';

interface Change {
  readonly step: PlannedStep;
  readonly from: Day;
  readonly to: Day;
}

/** Steps that lie elsewhere than before. */
function changesBetween(before: KitchenPlan, after: KitchenPlan): Change[] {
  const starts = new Map(before.steps.map((s) => [s.id, s.start]));
  return after.steps.flatMap((step) => {
    const from = starts.get(step.id);
    return from === undefined || from === step.start ? [] : [{ step, from, to: step.start }];
  });
}

/** What a move did to the step and to those after it, in a sentence or two. */
export function whatMoved(step: PlannedStep, before: BatchCalendar, after: BatchCalendar): string {
  const words = (d: Day) => dayInWords(d, after.plan.end);
  const changes = changesBetween(before.plan, after.plan);
  const self = after.plan.steps.find((s) => s.id === step.id);
  const others = changes.filter((c) => c.step.id !== step.id);
  const naming = (s: PlannedStep) => (s.supply === step.supply ? shortTitle(s) : stepTitle(s));
  const lead = `${capital(stepTitle(step))} ${self && self.start !== step.start ? 'now begins' : 'stays'} on ${words(self?.start ?? step.start)}.`;
  const rest =
    others.length === 0
      ? 'Nothing else moves.'
      : `With it: ${joined(others.map((c) => `${naming(c.step)} to ${words(c.to)}`))}.`;
  const { deadline, fits, end } = after.plan;
  const late =
    deadline !== undefined && fits === false && before.plan.fits !== false
      ? ` The plan now ends on ${words(end)}, after ${words(deadline)}.`
      : '';
  return `${lead} ${rest}${late}`;
}

/** "freeze 1", "weigh out". */
export function shortTitle({ kind, round }: Pick<PlannedStep, 'kind' | 'round'>): string {
  return round ? `${STEP_WORDS[kind]} ${round.number}` : STEP_WORDS[kind];
}

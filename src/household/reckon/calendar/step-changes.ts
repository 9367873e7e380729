/** What a move of one step changed in the calendar, and a sentence that says it. */
import { capital } from '../../../formulation/explain/sentences.ts';
import type { KitchenPlan, PlannedStep } from '../../../kitchen/calendar/kitchen-plan.ts';
import { shortTitle, stepTitle } from '../../../kitchen/calendar/step-words.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
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
  const t = words().calendar.move;
  const say = (d: Day) => dayInWords(d, after.plan.end);
  const changes = changesBetween(before.plan, after.plan);
  const self = after.plan.steps.find((s) => s.id === step.id) ?? step;
  const others = changes.filter((c) => c.step.id !== step.id);
  const naming = (s: PlannedStep) => (s.supply === step.supply ? shortTitle(s) : stepTitle(s));
  const title = capital(stepTitle(step));
  const { deadline, fits, end } = after.plan;
  const late = deadline !== undefined && fits === false && before.plan.fits !== false;
  return [
    (self.start !== step.start ? t.nowBegins : t.stays)(title, say(self.start)),
    others.length === 0 ? t.nothingElse : t.withIt(others.map((c) => t.to(naming(c.step), say(c.to)))),
    ...(late ? [t.nowLate(say(end), say(deadline))] : []),
  ].join(' ');
}

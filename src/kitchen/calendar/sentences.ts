/** What a kitchen plan comes to, in sentences. */
import { capital } from '../../formulation/explain/sentences.ts';
import { words } from '../../words/words.ts';
import { dayInWords, dayNumber, dayOf } from '../days.ts';
import type { Day } from '../model.ts';
import type { KitchenPlan, PlannedStep } from './kitchen-plan.ts';
import { stepWord } from './step-words.ts';

/**
 * The one thing to know on the first page: "Batch 3 runs out on 14 March; freeze oats by 21 February."
 * @throws RangeError where today is no day
 */
export function nextThing(plan: KitchenPlan, today: Day): string {
  const now = dayNumber(today, 'today');
  const { present, name: made } = plan.input;
  if (present?.runsOut.status === 'unknown') return present.runsOut.sentence;
  const runsOut = present?.runsOut;
  const lead = (then: string) =>
    capital(present && runsOut ? ranOut(present.name, runsOut.day, today, then) : then);
  const [next, then] = nextSteps(plan);
  if (!next) return lead(atRest(plan, today));
  const t = words().steps;
  const by = lastDay(plan, next);
  const todo = toDo(next, made, then);
  if (by === today) return lead(t.todoToday(todo));
  if (dayNumber(by) > now) return lead(t.todoBy(todo, dayInWords(by, today)));
  return lead(t.todoLate(todo, dayInWords(by, today), made, now - dayNumber(by)));
}

/** The last day on which a step can begin so that all is done by the deadline; without one, by the end of the plan. */
export function lastDay(plan: KitchenPlan, step: PlannedStep): Day {
  const pending = plan.steps.filter((s) => s.state !== 'done');
  const end = Math.max(...pending.map((s) => dayNumber(s.latest) + s.days));
  const deadline = plan.deadline === undefined ? end : dayNumber(plan.deadline);
  return dayOf(dayNumber(step.latest) + deadline - end);
}

/** All that is to be said of a plan: when food runs out, what sets the pace, whether it fits, and the way out. */
export function planSentences(plan: KitchenPlan): string[] {
  const t = words().steps;
  const { present, stopped = [], name: made } = plan.input;
  const day = (d: Day) => dayInWords(d, plan.start);
  const path = plan.criticalPath.map((id) => plan.steps.find((s) => s.id === id)!);
  const chain = path.map((s) => (s.days > 0 ? t.lasting(stepWord(s.kind), s.days) : stepWord(s.kind)));
  const [first] = nextSteps(plan);
  const said = [
    ...stopped.map((name) => words().pelletStock.stop.plan(capital(name))),
    ...(stopped.length > 0 && !present ? [t.bridge(undefined)] : []),
    ...(present?.doubt ? [words().pelletStock.stop.planMaybe(capital(present.name))] : []),
    ...(present ? [present.runsOut.sentence] : []),
    path.length > 0 ? t.pace(plan.criticalDays, chain.join(', ')) : t.allDone(made),
    ...(first ? [t.first(toDo(first, made), day(lastDay(plan, first)))] : []),
    ...verdict(plan, day),
  ];
  return said.map(capital);
}

function verdict(plan: KitchenPlan, say: (day: Day) => string): string[] {
  const t = words().steps;
  const { deadline, spare = 0, fits, shortest, end, frame } = plan;
  const { present, name: made, changeOver = true } = plan.input;
  const last = say(end);
  if (deadline === undefined) return [changeOver ? t.usedOn(made, last) : t.weighedOn(made, last)];
  if (fits && frame.from === undefined) return [changeOver ? t.usedBy(made, last) : t.weighedBy(made, last)];
  if (fits) return [spare === 0 ? t.justFits : t.fits(spare)];
  const days = dayNumber(end) - dayNumber(deadline);
  const late = (changeOver ? t.usedTooLate : t.weighedTooLate)(made, last, days, say(deadline));
  if (spare >= 0) return [late, t.moveEarlier(spare)];
  const bridge = t.bridge(present?.name);
  if (shortest?.fits) return [late, t.shortestFits(say(shortest.end))];
  if (shortest) return [late, t.shortestLate(say(shortest.end)), bridge];
  return [late, bridge];
}

/** The open step that can wait the least; and with buying, what is done with the goods on the same day. */
export function nextSteps(plan: KitchenPlan): PlannedStep[] {
  const open = plan.steps.filter((s) => s.state === 'open');
  const first = open.reduce<PlannedStep | undefined>(
    (best, s) => (best === undefined || s.latest < best.latest ? s : best),
    undefined,
  );
  if (!first) return [];
  if (first.kind !== 'buy' || first.days > 0) return [first];
  const then = open.find((s) => s.supply === first.supply && s.after.includes(first.id));
  return then && then.latest === first.latest ? [first, then] : [first];
}

function atRest(plan: KitchenPlan, today: Day): string {
  const t = words().steps;
  const going = plan.steps.find((s) => s.state === 'begun');
  if (!going) return t.ready(plan.input.name);
  const step = stepWord(going.kind);
  return going.end === today ? t.goesOnToday(step) : t.goesOn(step, dayInWords(going.end, today));
}

function ranOut(name: string, day: Day, today: Day, then: string): string {
  const t = words().steps;
  if (day === today) return t.runsOutToday(name, then);
  return (day < today ? t.ranOut : t.runsOut)(name, dayInWords(day, today), then);
}

/** What to do with which foods; more than three are counted. @param then what is done after buying on the same day */
function toDo({ kind, goods }: PlannedStep, made: string, then?: PlannedStep): string {
  const { steps: t, figures } = words();
  const what = goods.length > 3 ? t.foods(goods.length) : figures.list(goods.map((g) => g.name));
  if (then?.kind === 'freeze' || then?.kind === 'dry') return t.buyAnd[then.kind](what);
  return t.todo[kind](kind === 'weigh' || kind === 'change-over' ? made : what);
}

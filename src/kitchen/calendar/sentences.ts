/** What a kitchen plan comes to, in sentences. */
import { capital, joined } from '../../formulation/explain/sentences.ts';
import { countOfDays, dayInWords, dayNumber, dayOf } from '../days.ts';
import type { Day } from '../model.ts';
import type { KitchenPlan, PlannedStep } from './kitchen-plan.ts';
import type { StepKind } from './step-days.ts';
import { STEP_WORDS } from './step-words.ts';

type Naming = (what: string, made: string) => string;

const TO_DO: Readonly<Record<StepKind, Naming>> = {
  buy: (what) => `buy ${what}`,
  freeze: (what) => `freeze ${what}`,
  thaw: (what) => `take ${what} out of the freezer`,
  dry: (what) => `dry ${what}`,
  weigh: (_, made) => `weigh out ${made}`,
  'change-over': (_, made) => `begin to change over to ${made}`,
};

/**
 * The one thing to know on the first page: "Batch 3 runs out on 14 March; freeze oats by 21 February."
 * @throws RangeError where today is no day
 */
export function nextThing(plan: KitchenPlan, today: Day): string {
  const now = dayNumber(today, 'today');
  const { present, name: made } = plan.input;
  if (present?.runsOut.status === 'unknown') return present.runsOut.sentence;
  const words = (day: Day) => (day === today ? 'today' : dayInWords(day, today));
  const lead = present ? `${ranOut(present.name, present.runsOut.day, today)}; ` : '';
  const [next, then] = nextSteps(plan);
  if (!next) return capital(`${lead}${atRest(plan, words)}.`);
  const by = lastDay(plan, next);
  const todo = then ? `buy and ${phrase(then, made)}` : phrase(next, made);
  if (dayNumber(by) >= now) return capital(`${lead}${todo} ${by === today ? 'today' : `by ${words(by)}`}.`);
  const late = now - dayNumber(by);
  return capital(
    `${lead}${todo} now: it was due by ${words(by)}, so ${made} comes ${countOfDays(late)} late.`,
  );
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
  const { present, name: made } = plan.input;
  const words = (day: Day) => dayInWords(day, plan.start);
  const path = plan.criticalPath.map((id) => plan.steps.find((s) => s.id === id)!);
  const chain = path
    .map((s) => (s.days > 0 ? `${STEP_WORDS[s.kind]} (${s.days})` : STEP_WORDS[s.kind]))
    .join(', ');
  const [first] = nextSteps(plan);
  return [
    ...(present ? [present.runsOut.sentence] : []),
    ...(path.length > 0
      ? [`The critical path takes ${countOfDays(plan.criticalDays)}: ${chain}.`]
      : [`All steps to ${made} are done.`]),
    ...(first ? [`First of all: ${phrase(first, made)} by ${words(lastDay(plan, first))}.`] : []),
    ...verdict(plan, words),
  ];
}

function verdict(plan: KitchenPlan, words: (day: Day) => string): string[] {
  const { deadline, spare = 0, fits, shortest, end, frame } = plan;
  const { present, name: made, changeOver = true } = plan.input;
  const done = changeOver ? `the animals are used to ${made}` : `${made} is weighed out`;
  if (deadline === undefined) return [`On ${words(end)} ${done}.`];
  if (fits && frame.from === undefined) return [`Then ${done} by ${words(end)}.`];
  if (fits)
    return [
      spare === 0 ? 'It just fits: no day is to spare.' : `It fits, with ${countOfDays(spare)} to spare.`,
    ];
  const late = `It does not fit: ${done} on ${words(end)}, ${countOfDays(dayNumber(end) - dayNumber(deadline))} after ${words(deadline)}.`;
  if (spare >= 0) return [late, `Move steps to earlier days: ${countOfDays(spare)} would be to spare.`];
  const bridge = `Feed the complete pellet alone on the days without ${present?.name ?? 'the mix'} (common practice, no source), or make a small batch of what is ready.`;
  if (shortest?.fits)
    return [
      late,
      `With the shortest times that are common practice (no source) it would end on ${words(shortest.end)} and fit: give the steps fewer days.`,
    ];
  if (shortest)
    return [
      late,
      `Even with the shortest times that are common practice (no source) it ends on ${words(shortest.end)}.`,
      bridge,
    ];
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

function atRest(plan: KitchenPlan, words: (day: Day) => string): string {
  const going = plan.steps.find((s) => s.state === 'begun');
  if (!going) return `${plan.input.name} is ready`;
  return `${STEP_WORDS[going.kind]} goes on until ${words(going.end)}`;
}

function ranOut(name: string, day: Day, today: Day): string {
  if (day === today) return `${name} runs out today`;
  return `${name} ${day < today ? 'ran out' : 'runs out'} on ${dayInWords(day, today)}`;
}

/** What to do with which foods; more than three are counted. */
function phrase({ kind, goods }: PlannedStep, made: string): string {
  const names = goods.length > 3 ? `${goods.length} foods` : joined(goods.map((g) => g.name));
  return TO_DO[kind](names, made);
}

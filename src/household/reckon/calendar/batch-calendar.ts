/** The calendar of the next batch: what the household has turned into a plan, with its steps on the days that the keeper chose. */
import type { KitchenInput, KitchenPlan } from '../../../kitchen/calendar/kitchen-plan.ts';
import { moved } from '../../../kitchen/calendar/move-step.ts';
import { planKitchen } from '../../../kitchen/calendar/plan-kitchen.ts';
import { suppliesOf } from '../../../kitchen/calendar/supplies.ts';
import { leftOver, takenBy } from '../../../kitchen/cupboard/cupboard.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import type { Batch, NextBatch } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import type { Household, Mix } from '../../model.ts';
import { batchesFor, batchName } from '../batch/batches.ts';
import { nextBatchOf } from '../batch/next-batch.ts';
import { type PresentBatch, presentOf, stoppedOf } from '../batch/present-batch.ts';
import { asNamed } from '../cupboard/as-named.ts';
import { contentsOf } from '../cupboard/contents.ts';
import { stopOf } from '../cupboard/stops.ts';
import { onTrays } from '../drying/on-trays.ts';
import type { Circumstances } from './circumstances.ts';
import { foodsNeeded } from './foods-needed.ts';
import { type FrameMode, frameOf } from './plan-frame.ts';

export interface BatchCalendar {
  readonly plan: KitchenPlan;
  /** What the kitchen keeps of it, with the steps that could still be put on their days. */
  readonly next: NextBatch;
  /** Why a step is no longer on the day on which the keeper put it, one sentence each. */
  readonly dropped: readonly string[];
  readonly present?: PresentBatch;
  /** Batches that would be fed, were it not for a lot in them that is not used any more; empty as a rule. */
  readonly stopped: ReturnType<typeof stoppedOf>;
  /** The batch being weighed, which is the next one. */
  readonly weighing?: Batch;
  /** The first day that was given has passed: today counts. */
  readonly fromPassed: boolean;
  readonly mode: FrameMode;
  /** What it was worked out under. */
  readonly under: Circumstances;
}

/**
 * The plan of the next batch, with the steps on the days that the keeper chose.
 * @param mix with what its animals bring
 */
export function calendarOf(house: Household, mix: Mix, under: Circumstances): BatchCalendar {
  const { today } = under;
  const next = nextBatchOf(house, mix);
  const present = presentOf(house, mix, under);
  const stopped = stoppedOf(house, mix, under);
  const doubt = present && stopOf(house, present.batch, under.dayAt);
  const all = batchesFor(house, mix);
  const weighing = all.findLast((b) => b.mixId === mix.id && b.finishedAt === undefined);
  const days = house.kitchen[0]?.stepDays;
  const trays = onTrays(house);
  const lots = leftOver(contentsOf(asNamed(house, mix.problem.foods))).flatMap(({ lot, grams }) => {
    // What lies on the trays is on its way.
    const drying = trays.reduce((sum, t) => sum + (t.lot.id === lot.id ? takenBy(t.run) : 0), 0);
    return grams + drying > 0 ? [{ ...lot, grams: grams + drying }] : [];
  });
  const input: KitchenInput = {
    id: `${mix.id}-${weighing ? all.indexOf(weighing) + 1 : all.length + 1}`,
    name: batchName(all, weighing),
    supplies: suppliesOf(foodsNeeded(house, mix, under), lots, house.dryingRuns, today, under.dayAt),
    ...(days && { days }),
    changeOver: days?.['change-over'] !== 0,
    ...(weighing && { weighed: { from: under.dayAt(weighing.startedAt) } }),
    ...(present && {
      present: { name: present.name, runsOut: present.runsOut, ...(doubt && { doubt: true }) },
    }),
    ...(stopped.length > 0 && { stopped: stopped.map((s) => s.name) }),
  };
  const { frame, mode, fromPassed } = frameOf(next, present?.runsOut, today);
  const { plan, pins, dropped } = replayed(planKitchen(input, frame), next.pins);
  return {
    plan,
    next: { ...next, pins },
    dropped,
    mode,
    fromPassed,
    under,
    stopped,
    ...(present && { present }),
    ...(weighing && { weighing }),
  };
}

/** The plan with its steps put on their days in the order in which the keeper did it; what no longer fits is left. */
function replayed(
  plan: KitchenPlan,
  pins: NextBatch['pins'],
): { plan: KitchenPlan; pins: NextBatch['pins']; dropped: readonly string[] } {
  let now = plan;
  const kept: NextBatch['pins'][number][] = [];
  const dropped: string[] = [];
  for (const pin of pins) {
    const step = now.steps.find((s) => s.id === pin.step);
    if (!step) {
      dropped.push(words().calendar.move.stepGone(dayInWords(pin.day, plan.start)));
      continue;
    }
    // Begun or done: the day has served.
    if (step.state !== 'open') continue;
    const answer = moved(now, pin.step, pin.day);
    if (answer.ok) {
      now = answer.plan;
      kept.push(pin);
    } else dropped.push(words().calendar.move.dropped(answer.sentence));
  }
  return { plan: now, pins: kept, dropped };
}

/** One step of a kitchen plan put on another day, and why that cannot be. */

import { capital } from '../../formulation/explain/sentences.ts';
import { words } from '../../words/words.ts';
import { dayInWords, dayNumber, dayOf } from '../days.ts';
import type { Day } from '../model.ts';
import { type Blocked, Network } from './critical-path.ts';
import type { KitchenPlan, PlannedStep } from './kitchen-plan.ts';
import { planned } from './plan-kitchen.ts';
import { sketch } from './plan-steps.ts';
import { stepTitle } from './step-words.ts';

/** The plan after a move, or why the step cannot move there. */
export type MoveResult =
  | {
      readonly ok: true;
      readonly plan: KitchenPlan;
      /** Steps that lie elsewhere than before, the moved one among them. */
      readonly changed: readonly { readonly id: string; readonly from: Day; readonly to: Day }[];
    }
  | {
      readonly ok: false;
      /** Why not, and what can be done instead. */
      readonly sentence: string;
      /** First day on which the step can begin; absent where it cannot move at all. */
      readonly firstDay?: Day;
    };

/**
 * The plan with one step on another day. What waits for it moves as far as it must, what it waits for moves only where
 * it has to, all else stays; what has begun or is done never moves.
 * @throws RangeError where there is no such step or the day is no day
 */
export function moved(plan: KitchenPlan, stepId: string, day: Day): MoveResult {
  const { input, frame } = plan;
  const sketches = sketch(input, frame);
  const network = new Network(sketches);
  const before = new Map(plan.steps.map((s) => [s.id, dayNumber(s.start)]));
  const step = plan.steps.find((s) => s.id === network.task(stepId).id)!;
  if (step.state !== 'open')
    return {
      ok: false,
      sentence: words().calendar.move[step.state === 'done' ? 'isDone' : 'hasBegun'](
        capital(stepTitle(step)),
      ),
    };
  if (step.appointed)
    return {
      ok: false,
      sentence: words().calendar.move.withItsPack(capital(stepTitle(step))),
    };
  const floor = frame.from === undefined ? Number.NEGATIVE_INFINITY : dayNumber(frame.from);
  const starts = network.shifted(before, stepId, dayNumber(day), floor);
  if ('blocked' in starts) {
    const firstDay = dayOf(network.earliest(floor).get(stepId)!);
    return { ok: false, firstDay, sentence: impossible(plan, step, day, starts, firstDay) };
  }
  const next = planned(input, frame, starts);
  const changed = next.steps.flatMap((s) => {
    const from = dayOf(before.get(s.id)!);
    return from === s.start ? [] : [{ id: s.id, from, to: s.start }];
  });
  return { ok: true, plan: next, changed };
}

function impossible(plan: KitchenPlan, step: PlannedStep, day: Day, stop: Blocked, firstDay: Day): string {
  const t = words().calendar.move;
  const say = (d: Day) => dayInWords(d, plan.end);
  const title = capital(stepTitle(step));
  const [on, first] = [say(day), say(firstDay)];
  const blocked = plan.steps.find((s) => s.id === stop.blocked.id)!;
  if (blocked.id === step.id && (plan.frame.from === undefined || day >= plan.frame.from))
    return t.stillFreezing(title, on, first);
  if (blocked.id === step.id) return t.beforePlan(title, on, say(plan.frame.from!), first);
  const other = stepTitle(blocked);
  if (blocked.appointed) return t.fixedUntil(title, on, other, say(blocked.end), first);
  if (blocked.state !== 'open') return t.goesOnUntil(title, on, other, say(blocked.end), first);
  return t.tooEarlyFor(title, on, other, say(dayOf(stop.needed)), say(plan.frame.from!), first);
}

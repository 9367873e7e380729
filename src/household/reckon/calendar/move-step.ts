/** A step of the calendar put on another day. */
import { capital } from '../../../formulation/explain/sentences.ts';
import type { PlannedStep } from '../../../kitchen/calendar/kitchen-plan.ts';
import { moved } from '../../../kitchen/calendar/move-step.ts';
import { shortTitle, stepTitle } from '../../../kitchen/calendar/step-words.ts';
import { dayInWords, plusDays } from '../../../kitchen/days.ts';
import { movedStep } from '../../../kitchen/freezing/freeze-treatment.ts';
import type { Day, FreezeStep, Lot, NextBatch } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import type { Household, Mix } from '../../model.ts';
import { firstOverfullDay, withLots } from '../cupboard/freezer-load.ts';
import { type BatchCalendar, calendarOf } from './batch-calendar.ts';
import { whatMoved } from './step-changes.ts';

export type MoveAnswer =
  | {
      readonly ok: true;
      /** The kept plan, where days of the plan alone change. */
      readonly next?: NextBatch;
      /** Lots with their new days, where those change. */
      readonly lots: readonly Lot[];
      readonly after: BatchCalendar;
      /** What it did, in a sentence or two. */
      readonly sentence: string;
    }
  | {
      readonly ok: false;
      readonly sentence: string;
      /** First day on which it can be. */
      readonly firstDay?: Day;
      /** The freezer is what stands in the way. */
      readonly room?: true;
    };

/**
 * One step put on another day. A step of lots that are in the cupboard moves the days that are kept with those lots,
 * as far as the freezer has room; any other is kept with the plan.
 * @param mix with what its animals bring @throws RangeError where the plan has no such step
 */
export function moveStep(house: Household, mix: Mix, view: BatchCalendar, id: string, day: Day): MoveAnswer {
  const step = view.plan.steps.find((s) => s.id === id);
  if (!step) throw new RangeError(`the plan has no step "${id}"`);
  const lots = step.state === 'open' ? lotsOfStep(house, step) : [];
  if (lots.length > 0) return moveLots(house, mix, view, step, lots, day);
  const { pins } = view.next;
  // Several tries at one step are one move.
  const before = pins.at(-1)?.step === id ? pins.slice(0, -1) : pins;
  const base = calendarOf(withNext(house, { ...view.next, pins: before }), mix, view.under);
  const answer = moved(base.plan, id, day);
  if (!answer.ok) return answer;
  const next = { ...view.next, pins: [...before, { step: id, day }] };
  const then = calendarOf(withNext(house, next), mix, view.under);
  return { ok: true, next, lots: [], after: then, sentence: whatMoved(step, view, then) };
}

const withNext = (house: Household, next: NextBatch): Household => ({
  ...house,
  kitchen: [{ ...(house.kitchen[0] ?? { id: 'kitchen' }), next }],
});

/** The lots of a freeze or a thaw that are in the cupboard; none for what is still to be bought. */
function lotsOfStep(house: Household, step: PlannedStep): Lot[] {
  if (step.kind !== 'freeze' && step.kind !== 'thaw') return [];
  const ids = new Set(step.goods.flatMap((g) => g.lot ?? []));
  return house.lots.filter((l) => ids.has(l.id));
}

function moveLots(
  house: Household,
  mix: Mix,
  view: BatchCalendar,
  step: PlannedStep,
  lots: readonly Lot[],
  day: Day,
): MoveAnswer {
  const { plan, under } = view;
  const { today } = under;
  const t = words().calendar.move;
  const say = (d: Day) => dayInWords(d, plan.end);
  const rounds = plan.steps.filter(
    (s) => s.supply === step.supply && (s.kind === 'freeze' || s.kind === 'thaw'),
  );
  const index = rounds.indexOf(step);
  const planned: FreezeStep[] = rounds.map((s) => ({
    kind: s.kind as FreezeStep['kind'],
    from: s.start,
    to: s.end,
  }));
  const withDays = lots.map((l) => (l.cold.length > 0 ? l : { ...l, cold: planned }));
  const title = capital(stepTitle(step));
  const before = rounds[index - 1];
  const soonest = [today, ...lots.map((l) => l.boughtOn), ...(before ? [before.end] : [])].sort().at(-1)!;
  if (day < soonest)
    return {
      ok: false,
      firstDay: soonest,
      sentence:
        before && soonest === before.end
          ? t.beforeLasts(title, say(day), shortTitle(before), say(soonest))
          : t.firstDay(title, say(day), say(soonest)),
    };
  const on = (d: Day) => withDays.map((l) => movedStep(l, index, d));
  const changed = on(day);
  const full = firstOverfullDay(house, changed, today);
  if (full) {
    const free = Array.from({ length: MOST_TRIES }, (_, i) => plusDays(day, i + 1)).find(
      (d) => !firstOverfullDay(house, on(d), today),
    );
    return {
      ok: false,
      room: true,
      ...(free !== undefined && { firstDay: free }),
      sentence: [
        t.noRoom(title, say(day), say(full.day), full.grams, full.room),
        ...(free === undefined ? [] : [t.nextRoom(say(free))]),
      ].join(' '),
    };
  }
  const after = calendarOf(withLots(house, changed), mix, view.under);
  const fresh = after.dropped.filter((d) => !view.dropped.includes(d));
  return {
    ok: true,
    lots: changed,
    after,
    sentence: [whatMoved(step, view, after), ...fresh].join(' '),
  };
}

/** Days over which a place in the freezer is looked for. */
const MOST_TRIES = 120;

/** The first page: where the next thing is done, and what needs hands today. */

import { capital } from '../../formulation/explain/sentences.ts';
import type { Household } from '../../household/model.ts';
import { gramsMade } from '../../household/reckon/batch/batches.ts';
import { nearUseBy } from '../../household/reckon/batch/near-use-by.ts';
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import type { CareDue } from '../../household/reckon/care/due.ts';
import { hereAmong } from '../../household/reckon/care/here.ts';
import { lotsPastBest } from '../../household/reckon/cupboard/lots-to-look-at.ts';
import { treatmentToday } from '../../household/reckon/cupboard/treatment-today.ts';
import { runLines } from '../../household/reckon/drying/drying-runs.ts';
import { nextSteps, nextThing } from '../../kitchen/calendar/sentences.ts';
import type { StepKind } from '../../kitchen/calendar/step-days.ts';
import { nextCheck } from '../../kitchen/drying/check-times.ts';
import type { Day, Lot, Moment } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { dayAt } from '../shared/today.ts';
import { clockOf } from '../shared/words/clock.ts';
import { named } from '../shared/words/named.ts';
import { careErrands } from './care-words.ts';
import { byRank, type Errand, type Place } from './errand.ts';
import { upsetErrands } from './upset-errands.ts';

export interface NextWords {
  readonly sentence: string;
  readonly link: string;
  readonly to: Place;
}

function placeOf(kind: StepKind): { readonly link: string; readonly to: Place } {
  const t = words().today.links;
  const freezer = { link: t.freezer, to: FREEZER };
  const places: Readonly<Record<StepKind, { readonly link: string; readonly to: Place }>> = {
    buy: { link: t.shopping, to: ['shopping'] },
    freeze: freezer,
    thaw: freezer,
    dry: { link: t.drying, to: ['drying'] },
    weigh: { link: t.scale, to: ['weigh'] },
    'change-over': { link: t.changeOver, to: ['mix', 'change'] },
  };
  return places[kind];
}

const FREEZER: Place = ['cupboard', 'cold'];

/** The one sentence of the first page and where it is done. */
export function nextOf(house: Household, view: BatchCalendar, today: Day): NextWords {
  const { plan, present, weighing } = view;
  const t = words().today.links;
  const sentence = nextThing(plan, today);
  if (present?.runsOut.status === 'unknown') {
    const silent = hereAmong(house.animals, present.batch.animalIds).find((a) => a.dailyGrams === undefined);
    return silent
      ? { sentence, link: t.animal(silent.name), to: ['animals', silent.id] }
      : { sentence, link: t.forWhom, to: ['mix'] };
  }
  const step = nextSteps(plan)[0] ?? plan.steps.find((s) => s.state === 'begun');
  if (!step) return { sentence, link: t.days, to: ['calendar'] };
  if (step.kind === 'weigh' && weighing) return { sentence, link: t.weighOn, to: ['weigh', weighing.id] };
  return { sentence, ...placeOf(step.kind) };
}

/** What needs hands today. @param now ISO 8601 time, UTC @param care absent while it is still worked out */
export function errandsOf(house: Household, care: CareDue | undefined, today: Day, now: Moment): Errand[] {
  return byRank([
    ...(care ? [...upsetErrands(house, care, today), ...careErrands(care, today)] : []),
    ...dryingChecks(house, today, now),
    ...freezeSteps(house, today),
    ...pastBest(house, today),
  ]);
}

/** Batches that lie open on the scale: whatever else there is to do, they come first. */
export function openBatches(house: Household): Errand[] {
  const t = words().today;
  return house.batches
    .filter((b) => b.finishedAt === undefined && !b.givenUp)
    .map((b) => ({
      key: `weigh ${b.id}`,
      rank: 'later',
      words: t.weighing(b.name, gramsMade(b), b.grams),
      link: t.links.weighOn,
      to: ['weigh', b.id],
    }));
}

function dryingChecks(house: Household, today: Day, now: Moment): Errand[] {
  const t = words().today;
  return runLines(house).flatMap(({ run, name }): Errand[] => {
    const next = nextCheck(run);
    if (next === undefined) return [];
    const due = Date.parse(next) <= Date.parse(now);
    if (!due && dayAt(next) !== today) return [];
    const time = clockOf(next, Date.parse(now));
    return [
      {
        key: `check ${run.id}`,
        rank: due ? 'overdue' : 'later',
        words: due ? t.checkDue(name, time) : t.checkAt(name, time),
        link: t.links.run,
        to: ['drying', run.id],
      },
    ];
  });
}

/** Steps of the freeze treatment to tick off, those that begin today, and lots that have no days yet. */
function freezeSteps(house: Household, today: Day): Errand[] {
  const { due, goIn, comeOut, withoutDays } = treatmentToday(house, today);
  const t = words().today;
  const errand = (key: string, lots: readonly Lot[], say: (names: string, n: number) => string): Errand[] =>
    lots.length === 0
      ? []
      : [
          {
            key,
            rank: 'later',
            words: say(named(lots.map((l) => l.name)), lots.length),
            link: t.links.freezer,
            to: FREEZER,
          },
        ];
  return [
    ...errand('freeze-due', due, t.freezing.due),
    ...errand('freeze-in', goIn, t.freezing.goIn),
    ...errand('freeze-out', comeOut, t.freezing.comeOut),
    ...errand('freeze-none', withoutDays, t.freezing.noDays),
  ];
}

function pastBest(house: Household, today: Day): Errand[] {
  const { today: t, figures: f } = words();
  return lotsPastBest(house, today).map(({ id, name, bestBefore = today }) => ({
    key: `past ${id}`,
    rank: 'later',
    words: t.pastBest(name, f.day(bestBefore, today)),
    link: t.links.pack,
    to: ['cupboard', id],
    warns: true,
  }));
}

/** What is said of a batch near or past the day by which it is to be used. @param name "batch 3" */
export function nearUseByErrand(name: string, batch: string, useBy: Day, today: Day): Errand | undefined {
  const near = nearUseBy(useBy, today);
  if (!near) return undefined;
  const { today: t, figures: f } = words();
  const day = f.day(useBy, today);
  return {
    key: `use-by-${batch}`,
    rank: near === 'past' ? 'overdue' : 'later',
    words: capital(near === 'past' ? t.pastUseBy(name, day) : t.byDay(name, day)),
    link: t.links.record,
    to: ['weigh', batch],
    warns: true,
  };
}

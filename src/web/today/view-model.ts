/** The first page: where the next thing is done, and what needs hands today. */

import { capital } from '../../formulation/explain/sentences.ts';
import type { Household } from '../../household/model.ts';
import { nearUseBy } from '../../household/reckon/batch/near-use-by.ts';
import type { CareDue } from '../../household/reckon/care/due.ts';
import { lotsPastBest } from '../../household/reckon/cupboard/lots-to-look-at.ts';
import { treatmentToday } from '../../household/reckon/cupboard/treatment-today.ts';
import { runLines } from '../../household/reckon/drying/drying-runs.ts';
import { nextCheck } from '../../kitchen/drying/check-times.ts';
import type { Day, Lot, Moment } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { dayAt } from '../shared/today.ts';
import { clockOf } from '../shared/words/clock.ts';
import { named } from '../shared/words/named.ts';
import { careErrands } from './care-words.ts';
import { byRank, type Errand, type Place } from './errand.ts';
import { upsetLately } from './upset-lately.ts';

const FREEZER: Place = ['cupboard', 'cold'];

/** What needs hands today. @param now ISO 8601 time, UTC @param care absent while it is still worked out */
export function errandsOf(house: Household, care: CareDue | undefined, today: Day, now: Moment): Errand[] {
  return byRank([
    ...upsetLately(house, today),
    ...(care ? careErrands(care, today) : []),
    ...dryingChecks(house, today, now),
    ...freezeSteps(house, today),
    ...pastBest(house, today),
  ]);
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

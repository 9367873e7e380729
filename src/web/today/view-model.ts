/** The first page: where the next thing is done, and what needs hands today. */
import { capital, joined } from '../../formulation/explain/sentences.ts';
import type { Household } from '../../household/model.ts';
import { gramsMade } from '../../household/reckon/batch/batches.ts';
import { nearUseBy } from '../../household/reckon/batch/near-use-by.ts';
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import { changeOverDay } from '../../household/reckon/calendar/change-over-day.ts';
import { barredInUse, lotsPastBest } from '../../household/reckon/cupboard/lots-to-look-at.ts';
import { treatmentToday } from '../../household/reckon/cupboard/treatment-today.ts';
import { runLines } from '../../household/reckon/drying/drying-runs.ts';
import { nextSteps, nextThing } from '../../kitchen/calendar/sentences.ts';
import type { StepKind } from '../../kitchen/calendar/step-days.ts';
import { countOfDays, dayInWords } from '../../kitchen/days.ts';
import { nextCheck } from '../../kitchen/drying/check-times.ts';
import type { Day, Lot, Moment } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { dayAt } from '../shared/today.ts';
import { clockOf } from '../shared/words/clock.ts';
import { named } from '../shared/words/named.ts';

/** A place of the client, as its address has it. */
export type Place = readonly string[];

export interface Errand {
  readonly key: string;
  readonly words: string;
  /** What the link says, and where it goes. */
  readonly link: string;
  readonly to: Place;
  /** Something may be wrong, not only to be done. */
  readonly warns?: true;
}

export interface NextWords {
  readonly sentence: string;
  readonly link: string;
  readonly to: Place;
}

const PLACES: Readonly<Record<StepKind, { readonly link: string; readonly to: Place }>> = {
  buy: { link: 'Go to the shopping list', to: ['shopping'] },
  freeze: { link: 'Go to the freezer and the cold', to: ['cupboard', 'cold'] },
  thaw: { link: 'Go to the freezer and the cold', to: ['cupboard', 'cold'] },
  dry: { link: 'Go to drying', to: ['drying'] },
  weigh: { link: 'Go to the scale', to: ['weigh'] },
  'change-over': { link: 'Plan the change of food', to: ['mix', 'change'] },
};

/** The one sentence of the first page and where it is done. */
export function nextOf(house: Household, view: BatchCalendar, today: Day): NextWords {
  const { plan, present, weighing } = view;
  const sentence = nextThing(plan, today);
  if (present?.runsOut.status === 'unknown') {
    const silent = house.animals.find(
      (a) => present.batch.animalIds.includes(a.id) && a.dailyGrams === undefined,
    );
    return silent
      ? { sentence, link: `Go to ${silent.name}`, to: ['animals', silent.id] }
      : { sentence, link: 'Say which animals the mix is for', to: ['mix'] };
  }
  const step = nextSteps(plan)[0] ?? plan.steps.find((s) => s.state === 'begun');
  if (!step) return { sentence, link: 'See the calendar', to: ['calendar'] };
  if (step.kind === 'weigh' && weighing)
    return { sentence, link: 'Go on weighing', to: ['weigh', weighing.id] };
  return { sentence, ...PLACES[step.kind] };
}

/**
 * What needs hands today, the most pressing first.
 * @param now ISO 8601 time, UTC @param view of the mix at hand; absent where it has none
 */
export function errandsOf(
  house: Household,
  view: BatchCalendar | undefined,
  today: Day,
  now: Moment,
): Errand[] {
  return [
    ...beingWeighed(house),
    ...barredInBatches(house, view),
    ...dryingChecks(house, today, now),
    ...freezeSteps(house, today),
    ...changingOver(house, view),
    ...pastBest(house, today),
  ];
}

/** The change of food to the batch that was finished last, for as many days as the calendar gives it. */
function changingOver(house: Household, view: BatchCalendar | undefined): Errand[] {
  const present = view?.present;
  const change = present && changeOverDay(house, present, view.under);
  if (!change) return [];
  return [
    {
      key: `change ${present.batch.id}`,
      words: `Change over to ${present.name} slowly, a little more of it each day: day ${change.day} of ${countOfDays(change.of)}. See a vet if an animal eats less or has loose droppings.`,
      link: 'How much on each day',
      to: ['mix', 'change'],
    },
  ];
}

function beingWeighed(house: Household): Errand[] {
  return house.batches
    .filter((b) => b.finishedAt === undefined && !b.givenUp)
    .map((b) => ({
      key: `weigh ${b.id}`,
      words: `${b.name} is being weighed: ${sayGrams(gramsMade(b))} of ${sayGrams(b.grams)} lie in the bowl.`,
      link: 'Go on weighing',
      to: ['weigh', b.id],
    }));
}

function barredInBatches(house: Household, view: BatchCalendar | undefined): Errand[] {
  return barredInUse(house, view?.present?.batch, dayAt).map(({ lot, barred, batches }) => ({
    key: `barred ${lot.id}`,
    words: `${lot.name} is barred (${barred.why}) and went into ${joined(batches.map((batch) => `${batch.name} of ${dayInWords(dayAt(batch.startedAt), barred.on)}`))}. Do not feed it before you have looked into it.`,
    link: 'See what it reached',
    to: ['cupboard', lot.id],
    warns: true,
  }));
}

function dryingChecks(house: Household, today: Day, now: Moment): Errand[] {
  return runLines(house).flatMap(({ run, name }): Errand[] => {
    const next = nextCheck(run);
    if (next === undefined) return [];
    const due = Date.parse(next) <= Date.parse(now);
    if (!due && dayAt(next) !== today) return [];
    const time = clockOf(next, Date.parse(now));
    return [
      {
        key: `check ${run.id}`,
        words: due
          ? `Turn and check what dries: ${name}. It was due at ${time}.`
          : `Turn and check what dries at ${time}: ${name}.`,
        link: 'Go to this drying',
        to: ['drying', run.id],
      },
    ];
  });
}

/** Steps of the freeze treatment to tick off, those that begin today, and lots that have no days yet. */
function freezeSteps(house: Household, today: Day): Errand[] {
  const { due, goIn, comeOut, withoutDays } = treatmentToday(house, today);
  const errand = (
    key: string,
    lots: readonly Lot[],
    words: (names: string, many: boolean) => string,
  ): Errand[] =>
    lots.length === 0
      ? []
      : [
          {
            key,
            words: words(named(lots.map((l) => l.name)), lots.length > 1),
            link: 'Go to the cold',
            to: ['cupboard', 'cold'],
          },
        ];
  return [
    ...errand(
      'cold due',
      due,
      (names, many) =>
        `${names} ${many ? 'have' : 'has'} been frozen or thawed long enough: tick off the step.`,
    ),
    ...errand('cold in', goIn, (names, many) => `${names} ${many ? 'go' : 'goes'} into the freezer today.`),
    ...errand(
      'cold out',
      comeOut,
      (names, many) => `${names} ${many ? 'come' : 'comes'} out of the freezer today.`,
    ),
    ...errand(
      'cold none',
      withoutDays,
      (names, many) =>
        `${names} ${many ? 'wait' : 'waits'} for the cold and ${many ? 'have' : 'has'} no days yet.`,
    ),
  ];
}

function pastBest(house: Household, today: Day): Errand[] {
  return lotsPastBest(house, today).map(({ id, name, bestBefore = today }) => ({
    key: `past ${id}`,
    words: `${name} is past its best before, ${dayInWords(bestBefore, today)}: look at it and smell it before you use it.`,
    link: 'See the lot',
    to: ['cupboard', id],
    warns: true,
  }));
}

/** What is said of a batch near or past the day by which it is to be used. @param name "batch 3" */
export function nearUseByErrand(name: string, batch: string, useBy: Day, today: Day): Errand | undefined {
  const near = nearUseBy(useBy, today);
  if (!near) return undefined;
  const words =
    near === 'past'
      ? `${name} was to be used by ${dayInWords(useBy, today)}: an estimate, but do not feed it without looking, and better make a new one.`
      : `${name} is to be used by ${dayInWords(useBy, today)} (an estimate).`;
  return {
    key: `use by ${batch}`,
    words: capital(words),
    link: 'See its record',
    to: ['weigh', batch],
    warns: true,
  };
}

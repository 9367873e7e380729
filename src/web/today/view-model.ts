/** The first page: where the next thing is done, and what needs hands today. */
import { capital, joined } from '../../formulation/explain/sentences.ts';
import type { Household } from '../../household/model.ts';
import { reachOf } from '../../kitchen/batch/trace.ts';
import { nextSteps, nextThing } from '../../kitchen/calendar/sentences.ts';
import { STEP_DAYS, type StepKind } from '../../kitchen/calendar/step-days.ts';
import { leftOver } from '../../kitchen/cupboard/cupboard.ts';
import { countOfDays, dayInWords, daysBetween } from '../../kitchen/days.ts';
import { nextCheck } from '../../kitchen/drying/check-times.ts';
import type { Day, Lot, Moment } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { type CalendarView, gramsMade, named } from '../calendar/view-model.ts';
import { keptOf, lotsByFood } from '../cupboard/view-model.ts';
import { clockOf, runLines } from '../drying/view-model.ts';
import { dayAt } from '../shared/today.ts';

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
export function nextOf(house: Household, view: CalendarView, today: Day): NextWords {
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

/** A household in which nothing was bought, dried or weighed yet. */
export function isNew(house: Household): boolean {
  return house.lots.length + house.batches.length + house.dryingRuns.length === 0;
}

/** What is made up for a start, by name. */
export function inventedIn(house: Household): string[] {
  return [...house.animals, ...house.foods].flatMap((o) => (o.invented ? [o.name] : []));
}

/**
 * What needs hands today, the most pressing first.
 * @param now ISO 8601 time, UTC @param view of the mix at hand; absent where it has none
 */
export function errandsOf(
  house: Household,
  view: CalendarView | undefined,
  today: Day,
  now: Moment,
): Errand[] {
  return [
    ...beingWeighed(house),
    ...barredInBatches(house, view),
    ...looks(house, today, now),
    ...coldSteps(house, today),
    ...changingOver(house, view, today),
    ...pastBest(house, today),
  ];
}

/** The change of food to the batch that was finished last, for as many days as the calendar gives it. */
function changingOver(house: Household, view: CalendarView | undefined, today: Day): Errand[] {
  const { batch, name } = view?.present ?? {};
  if (batch?.finishedAt === undefined) return [];
  const days = house.kitchen[0]?.stepDays?.['change-over'] ?? STEP_DAYS['change-over'];
  const day = daysBetween(dayAt(batch.finishedAt), today) + 1;
  if (day < 1 || day > days) return [];
  return [
    {
      key: `change ${batch.id}`,
      words: `Change over to ${name} slowly, a little more of it each day: day ${day} of ${countOfDays(days)}. See a vet if an animal eats less or has loose droppings.`,
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

/** Barred lots in batches that are not used up. */
function barredInBatches(house: Household, view: CalendarView | undefined): Errand[] {
  const kept = keptOf(house);
  return house.lots.flatMap((lot): Errand[] => {
    if (!lot.barred) return [];
    const fed = reachOf(lot.id, kept, dayAt).batches.filter(
      ({ batch }) =>
        !batch.givenUp &&
        batch.left?.grams !== 0 &&
        (batch.finishedAt === undefined || batch.id === view?.present?.batch.id),
    );
    if (fed.length === 0) return [];
    return [
      {
        key: `barred ${lot.id}`,
        words: `${lot.name} is barred (${lot.barred.why}) and went into ${joined(fed.map(({ batch }) => `${batch.name} of ${dayInWords(dayAt(batch.startedAt), lot.barred!.on)}`))}. Do not feed it before you have looked into it.`,
        link: 'See what it reached',
        to: ['cupboard', lot.id],
        warns: true,
      },
    ];
  });
}

function looks(house: Household, today: Day, now: Moment): Errand[] {
  return runLines(house).flatMap(({ run, name }): Errand[] => {
    const next = nextCheck(run);
    if (next === undefined) return [];
    const due = Date.parse(next) <= Date.parse(now);
    if (!due && dayAt(next) !== today) return [];
    const time = clockOf(next, Date.parse(now));
    return [
      {
        key: `look ${run.id}`,
        words: due
          ? `Turn and check what dries: ${name}. It was due at ${time}.`
          : `Turn and check what dries at ${time}: ${name}.`,
        link: 'Go to this drying',
        to: ['drying', run.id],
      },
    ];
  });
}

/** Steps in the cold to tick off, those that begin today, and lots that have no days yet. */
function coldSteps(house: Household, today: Day): Errand[] {
  const lines = lotsByFood(house, today).flatMap((f) => f.lots);
  const of = (test: (lot: Lot, kind: string) => boolean) =>
    lines.filter((l) => test(l.lot, l.state.kind)).map((l) => l.lot);
  const nextStep = (lot: Lot) => lot.cold.find((s) => s.doneOn === undefined);
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
  const begins = (kind: 'freeze' | 'thaw') =>
    of((l, state) => state === 'cold' && nextStep(l)?.kind === kind && nextStep(l)?.from === today);
  return [
    ...errand(
      'cold due',
      of((_, state) => state === 'due'),
      (names, many) =>
        `${names} ${many ? 'have' : 'has'} been frozen or thawed long enough: tick off the step.`,
    ),
    ...errand(
      'cold in',
      begins('freeze'),
      (names, many) => `${names} ${many ? 'go' : 'goes'} into the freezer today.`,
    ),
    ...errand(
      'cold out',
      begins('thaw'),
      (names, many) => `${names} ${many ? 'come' : 'comes'} out of the freezer today.`,
    ),
    ...errand(
      'cold none',
      of((l, state) => state === 'waits' && l.cold.length === 0),
      (names, many) =>
        `${names} ${many ? 'wait' : 'waits'} for the cold and ${many ? 'have' : 'has'} no days yet.`,
    ),
  ];
}

function pastBest(house: Household, today: Day): Errand[] {
  const past = leftOver(keptOf(house)).filter(
    ({ lot, grams }) => grams > 0 && !lot.barred && lot.bestBefore !== undefined && lot.bestBefore < today,
  );
  return past.map(({ lot }) => ({
    key: `past ${lot.id}`,
    words: `${lot.name} is past its best before, ${dayInWords(lot.bestBefore!, today)}: look at it and smell it before you use it.`,
    link: 'See the lot',
    to: ['cupboard', lot.id],
    warns: true,
  }));
}

/** From so many days before its use-by a batch is spoken of (our own choice, no source). */
const NEAR_DAYS = 14;

/** What is said of a batch near or past the day by which it is to be used. @param name "batch 3" */
export function nearUseBy(name: string, batch: string, useBy: Day, today: Day): Errand | undefined {
  const left = daysBetween(today, useBy);
  if (left > NEAR_DAYS) return undefined;
  const words =
    left < 0
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

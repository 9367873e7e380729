/** A household with lots and batches to plan with, for tests. */
import { demoHousehold } from '../../src/household/demo.ts';
import type { Household, Mix } from '../../src/household/model.ts';
import type { Circumstances } from '../../src/household/reckon/calendar/circumstances.ts';
import type { Batch, Day, FreezeStep, Kitchen, Lot } from '../../src/kitchen/model.ts';
import { lotOf } from './cupboards.ts';

export const today = '2026-03-10';

export const demo = demoHousehold();

/** The mix of the demo household. */
export const mix: Mix = demo.mixes[0]!;

export const house = (about: Partial<Household> = {}): Household => ({ ...demo, ...about });

export const kitchen = (about: Partial<Kitchen>): Kitchen[] => [{ id: 'kitchen', ...about }];

/** Freeze and thaw by turns, from each of five days to the next; the first of them ticked off. */
export const rounds = (days: readonly string[], done = 0): FreezeStep[] =>
  (['freeze', 'thaw', 'freeze', 'thaw'] as const).map((kind, i) => ({
    kind,
    from: days[i]!,
    to: days[i + 1]!,
    ...(i < done && { doneOn: days[i + 1]! }),
  }));

/** 500 g of a food, dry, bought two days ago. */
export const lot = (food: string, about: Partial<Lot> = {}): Lot =>
  lotOf({ id: `lot-${food}`, food, grams: 500, boughtOn: '2026-03-08', ...about });

/** 300 g of the mix, finished on a day. */
export const batch = (id: string, on: string, about: Partial<Batch> = {}): Batch => ({
  id,
  mixId: mix.id,
  name: mix.name,
  problem: mix.problem,
  shares: mix.shares,
  order: [],
  grams: 300,
  pours: [{ food: 'millet', lots: [], target: 300, grams: 300, at: `${on}T09:00:00` }],
  animalIds: mix.animalIds,
  startedAt: `${on}T09:00:00`,
  finishedAt: `${on}T11:00:00`,
  ...about,
});

/** The day, moments counted by their own date; no fresh food known, no share chosen. */
export const under = (day: Day, more: Partial<Circumstances> = {}): Circumstances => ({
  today: day,
  dayAt: (moment) => moment.slice(0, 10),
  table: new Map(),
  chosenFor: () => undefined,
  ...more,
});

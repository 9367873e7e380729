/** An invented household that feeds from a batch, and notes what is left of it. */
import { type Feeding, feedingId, type WeighBack } from '../../src/care/model.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import type { Household } from '../../src/household/model.ts';
import { plusDays } from '../../src/kitchen/days.ts';
import type { Batch, Day } from '../../src/kitchen/model.ts';

/** g of mix and of pellet that its animal is fed a day. */
export const MIX_A_DAY = 6;
export const PELLET_A_DAY = 6;

/** The demonstration with a finished batch of 300 g, poured evenly of its twenty foods. @param today the batch is a month old then */
export function fedHousehold(today: Day): Household {
  const demo = demoHousehold();
  const [mix] = demo.mixes;
  if (!mix) throw new Error('the demonstration lacks a mix');
  const made = `${plusDays(today, -30)}T09:00:00.000Z`;
  const foods = mix.problem.foods.map((f) => f.id);
  const batch: Batch = {
    id: 'batch-1',
    mixId: mix.id,
    name: mix.name,
    problem: mix.problem,
    shares: mix.shares,
    order: foods,
    grams: 300,
    pours: foods.map((food) => ({ food, lots: [], target: 15, grams: 15, at: made })),
    animalIds: mix.animalIds,
    startedAt: made,
    finishedAt: made,
  };
  return { ...demo, batches: [batch] };
}

/** A day on which the animal of {@link fedHousehold} was fed as usual. */
export function fedOn(on: Day, left?: WeighBack, animalId = 'demo-animal'): Feeding {
  return {
    id: feedingId(animalId, on),
    animalId,
    on,
    at: `${on}T19:00:00.000Z`,
    mix: { batchId: 'batch-1', grams: MIX_A_DAY },
    beside: [{ food: 'demo-pellet', grams: PELLET_A_DAY }],
    ...(left && { left }),
  };
}

/** Whatever the household accepts, no screen's reckoning throws, runs on for ever, or says a number that is none. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withEvidence } from '../../src/foods/evidence.ts';
import type { Household, Mix } from '../../src/household/model.ts';
import { gramsMade } from '../../src/household/reckon/batch/batches.ts';
import { nextBatchOf, sizeOfNext } from '../../src/household/reckon/batch/next-batch.ts';
import { leftOn } from '../../src/household/reckon/batch/present-batch.ts';
import { usedShares } from '../../src/household/reckon/batch/used-shares.ts';
import { calendarOf } from '../../src/household/reckon/calendar/batch-calendar.ts';
import { moveStep } from '../../src/household/reckon/calendar/move-step.ts';
import {
  lotsWithoutDays,
  overdueFreezeSteps,
  readyFoods,
} from '../../src/household/reckon/calendar/plan-notices.ts';
import { careDue } from '../../src/household/reckon/care/due.ts';
import { weightsOf } from '../../src/household/reckon/care/weight-of.ts';
import { contentsOf } from '../../src/household/reckon/cupboard/contents.ts';
import { changedByPlan, freezerDays } from '../../src/household/reckon/cupboard/freezer-days.ts';
import { firstOverfullDay, gramsInFreezer } from '../../src/household/reckon/cupboard/freezer-load.ts';
import { groupsIn } from '../../src/household/reckon/cupboard/lot-foods.ts';
import { lotsByFood } from '../../src/household/reckon/cupboard/lots-by-food.ts';
import { lotsToFreeze, lotsToTick } from '../../src/household/reckon/cupboard/lots-to-freeze.ts';
import { cupboardChanges } from '../../src/household/reckon/cupboard/on-hand.ts';
import { pourLots } from '../../src/household/reckon/cupboard/take-from-lots.ts';
import { checkMoments } from '../../src/household/reckon/drying/drying-checks.ts';
import { nextLoadOf } from '../../src/household/reckon/drying/drying-loads.ts';
import { kindOf, outcomeOf } from '../../src/household/reckon/drying/drying-outcome.ts';
import { lotsToDry, runLines } from '../../src/household/reckon/drying/drying-runs.ts';
import { freshFoodOf, ownFresh } from '../../src/household/reckon/foods/fresh-food.ts';
import { bringingOf, eatersOf, fedMix, otherTarget } from '../../src/household/reckon/mix/eaters.ts';
import { limitOwners } from '../../src/household/reckon/mix/own-limits.ts';
import { refusableFoods, refusedFoods } from '../../src/household/reckon/mix/refusals.ts';
import { countRules, groupsOf, measurable } from '../../src/household/reckon/mix/wishes.ts';
import { inventedIn, isNew } from '../../src/household/reckon/new-household.ts';
import { eatingOf } from '../../src/household/reckon/shopping/eating.ts';
import { sellerNames } from '../../src/household/reckon/shopping/sellers.ts';
import { shoppingQuestion } from '../../src/household/reckon/shopping/shopping-question.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { reachOf } from '../../src/kitchen/batch/trace.ts';
import { dryingEntries, planAsIcs } from '../../src/kitchen/calendar/icalendar.ts';
import { planSentences } from '../../src/kitchen/calendar/sentences.ts';
import type { Day } from '../../src/kitchen/model.ts';
import { unconfirmedBounds, withConfirmations } from '../../src/targets/confirm.ts';
import { PROFILES } from '../../src/targets/profiles.ts';
import { byDay, spanInWords, spanOf, strandsOf } from '../../src/web/calendar/view-model.ts';
import { checkLine, checksDue } from '../../src/web/drying/checks-due.ts';
import { foodLines, sayWater } from '../../src/web/drying/view-model.ts';
import { dayAt } from '../../src/web/shared/today.ts';
import { nextOf } from '../../src/web/today/next-of.ts';
import { errandsOf, nearUseByErrand } from '../../src/web/today/view-model.ts';
import { endWords, moment } from '../../src/web/weigh-out/view-model.ts';
import { draws } from '../draws.ts';
import { household } from './arbitraries.ts';
import { expectShown } from './expect-shown.ts';

const TODAY = '2026-11-28';
const NOW = Date.parse(`${TODAY}T12:00:00Z`);
const reference = loadReference();
const table = new Map(['sr28:20038', 'sr28:11124'].flatMap((ref) => [[ref, reference.get(ref)] as const]));
const known = new Map([...table].flatMap(([ref, food]) => (food ? [[ref, food] as const] : [])));

/** Longer than any screen may take to reckon, on a busy machine, ms. */
const LONGEST = 2000;

/** Works out what a screen shows, and looks at it. */
function shown<T>(what: string, reckon: () => T): T {
  const from = performance.now();
  const value = reckon();
  expect(performance.now() - from, what).toBeLessThan(LONGEST);
  expectShown(what, value);
  return value;
}

function profilesOf(house: Household) {
  const published = PROFILES.map((p) =>
    withConfirmations(
      p,
      house.profiles.find((kept) => kept.id === p.id),
    ),
  );
  return [...published, ...house.profiles];
}

function ofCupboard(house: Household): void {
  const kept = shown('contents', () => contentsOf(house));
  shown('lots by food', () => lotsByFood(house, TODAY));
  shown('lots to freeze', () => [lotsToFreeze(house, TODAY), lotsToTick(house, TODAY)]);
  shown('freezer', () => [gramsInFreezer(house, TODAY), firstOverfullDay(house, house.lots, TODAY)]);
  shown('sellers', () => sellerNames(house));
  const freezer = house.kitchen[0]?.freezer;
  if (freezer) {
    const days = shown('freezer days', () => freezerDays(house, freezer, TODAY));
    if ('plan' in days) shown('changed by plan', () => changedByPlan(house, days.plan));
  }
  for (const lot of house.lots) shown('reach', () => reachOf(lot.id, kept, dayAt).animalIds);
  for (const batch of house.batches) {
    for (const { food } of batch.pours)
      for (const grams of [5, -5])
        shown('lots of a pour', () =>
          pourLots(kept, food, grams, { day: TODAY, groupOf: groupsIn(house), pours: batch.pours }),
        );
  }
}

function ofDrying(house: Household): void {
  shown('runs', () => [runLines(house), lotsToDry(house)]);
  shown('checks due', () => checksDue(house, NOW));
  for (const lot of house.lots) shown('next load', () => nextLoadOf(house, lot));
  for (const run of house.dryingRuns) {
    shown('moments', () => checkMoments(run));
    shown('check', () => checkLine(run, NOW));
    const lot = house.lots.find((l) => l.id === run.lot);
    for (const id of ['sr28:11124', 'own-1', lot?.food ?? '']) {
      const fresh = freshFoodOf(id, house.foods, known);
      shown('kind', () => kindOf(house, lot?.food ?? '', fresh));
      const outcome = shown('outcome', () => outcomeOf(house, run, fresh, { scaleStep: 1 }));
      if (!outcome.ok) continue;
      shown('water', () => sayWater(outcome.value));
      for (const { problem } of house.mixes)
        for (const food of problem.foods)
          shown('food lines', () => faultOr(() => foodLines(food, outcome.value, known)));
    }
  }
}

/** What a screen says in the place of what cannot be worked out. */
function faultOr<T>(work: () => T): T | string {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
}

function ofMix(house: Household, kept: Mix): void {
  const profiles = profilesOf(house);
  const mix = shown('eaters', () => fedMix(house, kept, profiles));
  const bringing = shown('bringing', () => bringingOf(house, kept, profiles));
  shown('eaters of it', () => eatersOf(kept, bringing));
  shown('target', () => otherTarget(kept, house.animals, profiles));
  shown('limits', () => limitOwners(kept, house.animals));
  shown('wishes', () => [measurable(kept.problem), groupsOf(kept.problem), countRules(kept.problem)]);
  shown('used shares', () => usedShares(mix));
  shown('cupboard changes', () => cupboardChanges(house, mix, TODAY));
  const size = shown('size', () => [nextBatchOf(house, mix), sizeOfNext(house, mix)]);
  expect(size).toHaveLength(2);
  shown('eating', () => eatingOf(mix, house.animals));
  shown('shopping', () => {
    const grams = { grams: sizeOfNext(house, mix).grams ?? mix.problem.batch_grams };
    return shoppingQuestion(house, mix, {
      size: grams,
      aim: 'cost',
      on: TODAY,
      nameOf: (f) => f.name ?? f.id,
    });
  });
  const under = { today: TODAY, dayAt, table: known, chosenFor: () => undefined };
  const care = careDue(house, { ...under, weightsOf });
  shown('errands', () => errandsOf(house, care, TODAY, new Date(NOW).toISOString()));
  const view = shown('calendar', () => faultOr(() => calendarOf(house, mix, under)));
  if (typeof view === 'string') return;
  shown('next', () => nextOf(house, view, TODAY));
  const { plan } = view;
  shown('picture', () => [strandsOf(plan), spanOf(plan, TODAY), byDay(plan)]);
  shown('spans', () => plan.steps.map((s) => spanInWords(s, TODAY)));
  shown('notices', () => [lotsWithoutDays(house, plan), overdueFreezeSteps(plan, TODAY), readyFoods(plan)]);
  shown('sentences', () => planSentences(plan));
  const stamp = new Date(NOW).toISOString();
  const drying = runLines(house).flatMap(({ run, name }) =>
    dryingEntries({ id: run.id, name }, checkMoments(run)),
  );
  shown('calendar file', () => planAsIcs(plan, { stamp, reminders: true }, drying));
  if (view.present) shown('left', () => view.present && leftOn(view.present, TODAY));
  for (const step of plan.steps)
    for (const day of ['1990-01-01', '2026-12-01', '2100-12-31'] as Day[])
      shown('moved', () => {
        const answer = faultOr(() => moveStep(house, mix, view, step.id, day));
        return typeof answer === 'string' ? answer : answer.ok;
      });
}

describe('a household of whatever is accepted', () => {
  it('is reckoned through by every screen', () => {
    fc.assert(
      fc.property(household, (house) => {
        shown('new', () => [isNew(house), inventedIn(house)]);
        ofCupboard(house);
        ofDrying(house);
        shown('errands without a mix', () => errandsOf(house, undefined, TODAY, new Date(NOW).toISOString()));
        for (const mix of house.mixes) ofMix(house, mix);
        for (const animal of house.animals)
          shown('refusals', () => [refusableFoods(house, animal), refusedFoods(house, animal)]);
        for (const batch of house.batches)
          shown('batch', () => [
            gramsMade(batch),
            endWords(batch),
            moment(batch.startedAt),
            nearUseByErrand(batch.name, batch.id, batch.left?.on ?? TODAY, TODAY),
          ]);
        for (const food of house.foods) {
          shown('fresh', () => ownFresh(food));
          if (food.evidence) shown('evidence', () => faultOr(() => withEvidence(food, food.evidence ?? {})));
        }
        for (const profile of profilesOf(house)) shown('profile', () => unconfirmedBounds(profile));
      }),
      { numRuns: draws(5000, 60) },
    );
  }, 600_000);
});

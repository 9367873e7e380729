/**
 * What is worked out once and kept beside the lists must come out as worked out plainly, each time, also when one list
 * after the other is changed. The plain definitions stand here, word for word as one would say them.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoHousehold } from '../../src/household/demo.ts';
import type { Household } from '../../src/household/model.ts';
import {
  contentsOf,
  contentsOfBatch,
  contentsOfFoods,
} from '../../src/household/reckon/cupboard/contents.ts';
import { cupboardFood, cupboardFoods, groupsIn } from '../../src/household/reckon/cupboard/lot-foods.ts';
import { driedIn, lotById } from '../../src/household/reckon/cupboard/lot-index.ts';
import { lotsByFood } from '../../src/household/reckon/cupboard/lots-by-food.ts';
import { weighableOn } from '../../src/household/reckon/cupboard/weighable.ts';
import { originOf, pricePerGram, reachOf } from '../../src/kitchen/batch/trace.ts';
import {
  allocate,
  type CupboardContents,
  type LotStock,
  leftOver,
  oldestFirst,
  type Ready,
  totals,
} from '../../src/kitchen/cupboard/cupboard.ts';
import { isWeighable, mayBeWeighed } from '../../src/kitchen/freezing/freeze-treatment.ts';
import { CRUMB } from '../../src/kitchen/tolerances.ts';
import { draws } from '../draws.ts';
import { cupboards } from '../kitchen/cupboards.ts';
import { tenYears } from './ten-years.ts';

const DAY = '2026-03-10';
const dayAt = (moment: string) => moment.slice(0, 10);
const small = tenYears({ size: 0.02 });

const houseOf = (kept: CupboardContents): Household => ({
  ...demoHousehold(),
  lots: kept.lots,
  dryingRuns: kept.runs,
  batches: kept.batches,
});

function plainLeft(kept: CupboardContents): LotStock[] {
  return kept.lots.map((lot) => {
    let used = 0;
    for (const batch of kept.batches)
      for (const pour of batch.pours)
        for (const part of pour.lots) if (part.lot === lot.id) used += part.grams;
    for (const run of kept.runs) if (run.lot === lot.id) used += run.gramsTaken ?? run.gramsBefore;
    for (const fed of kept.fed ?? []) if (fed.lot === lot.id) used += fed.grams;
    const { left } = lot;
    let since = 0;
    if (left) {
      for (const batch of kept.batches)
        for (const pour of batch.pours)
          for (const part of pour.lots)
            if (part.lot === lot.id && dayAt(pour.at) >= left.on) since += part.grams;
      for (const run of kept.runs)
        if (run.lot === lot.id && dayAt(run.startedAt) >= left.on) since += run.gramsTaken ?? run.gramsBefore;
      for (const fed of kept.fed ?? []) if (fed.lot === lot.id && fed.on >= left.on) since += fed.grams;
    }
    const rest = left ? left.grams - since : lot.grams - used;
    return { lot, used, grams: rest > CRUMB ? rest : 0, over: rest < -CRUMB ? -rest : 0 };
  });
}

function plainTakes(kept: CupboardContents, food: string, needed: number, ready: Ready) {
  const takes: { lot: string; grams: number }[] = [];
  let open = needed;
  const usable = plainLeft(kept)
    .filter(({ lot, grams }) => lot.food === food && grams > 0)
    .filter(({ lot }) => !lot.barred && lot.form !== 'fresh' && ready(lot).ok)
    .sort((a, b) => oldestFirst(a.lot, b.lot));
  for (const { lot, grams } of usable) {
    if (open <= CRUMB) break;
    takes.push({ lot: lot.id, grams: Math.min(open, grams) });
    open -= Math.min(open, grams);
  }
  return takes;
}

function plainReady(kept: CupboardContents, food: string, ready: Ready): number {
  return plainLeft(kept)
    .filter(({ lot }) => lot.food === food && !lot.barred && lot.form !== 'fresh' && ready(lot).ok)
    .reduce((sum, l) => sum + l.grams, 0);
}

/** Batches with a pour that names one of the lots. */
function plainBatches(kept: CupboardContents, lots: ReadonlySet<string>): string[] {
  return kept.batches
    .filter((b) => b.pours.some((p) => p.lots.some((l) => lots.has(l.lot))))
    .map((b) => b.id);
}

function expectPlain(kept: CupboardContents) {
  const house = houseOf(kept);
  const ready = weighableOn(DAY, groupsIn(house));
  expect(leftOver(kept)).toEqual(plainLeft(kept));
  for (const lot of kept.lots)
    for (const group of [undefined, 'seed', 'animal'] as const)
      expect(isWeighable(lot, DAY, group)).toBe(mayBeWeighed(lot, DAY, group).ok);
  const foods = [...new Set(kept.lots.map((l) => l.food))];
  expect(totals(kept, ready).map((t) => t.food)).toEqual(foods);
  for (const { food, ready: grams } of totals(kept, ready))
    expect(grams).toBeCloseTo(plainReady(kept, food, ready), 9);
  for (const food of [...foods, 'none'])
    for (const needed of [0, 50, Number.MAX_VALUE])
      expect(
        allocate(kept, food, needed, ready).takes.map(({ lot, grams }) => ({ lot: lot.id, grams })),
      ).toEqual(plainTakes(kept, food, needed, ready));
  for (const food of lotsByFood(house, DAY)) {
    const order = plainTakes(kept, food.food, Number.MAX_VALUE, ready).map((t) => t.lot);
    const others = kept.lots.filter((l) => l.food === food.food && !order.includes(l.id)).map((l) => l.id);
    expect(food.lots.map((l) => l.lot.id)).toEqual([...order, ...others]);
  }
  for (const lot of kept.lots) {
    expect(lotById(house, lot.id)).toBe(kept.lots.find((l) => l.id === lot.id));
    const reach = reachOf(lot.id, kept, dayAt);
    const lots = new Set([lot.id, ...reach.driedLots.map((l) => l.id)]);
    expect(reach.batches.map(({ batch }) => batch.id)).toEqual(plainBatches(kept, lots));
  }
  for (const run of kept.runs)
    expect(driedIn(house, run.id)).toBe(kept.lots.find((l) => l.driedIn === run.id));
}

describe('what is kept beside the lists', () => {
  it('comes out as worked out plainly, list after list', () => {
    fc.assert(
      fc.property(cupboards, cupboards, (one, other) => {
        const on = one.batches[0]?.pours[0]?.at.slice(0, 10) ?? DAY;
        // Each step changes one list; the others stay the same objects.
        const steps: CupboardContents[] = [
          one,
          { ...one, lots: one.lots.map((l, i) => (i === 0 ? { ...l, grams: l.grams + 100 } : l)) },
          { ...one, lots: one.lots.map((l, i) => (i % 2 === 0 ? { ...l, left: { grams: 90, on } } : l)) },
          { ...one, batches: other.batches },
          { ...one, runs: other.runs },
          one,
        ];
        for (const kept of steps) expectPlain(kept);
      }),
      { numRuns: draws(2000, 60) },
    );
  });

  it('comes out so for years of keeping too', () => {
    expectPlain(contentsOf(small));
  });

  it('finds the foods of mixes and own ones by their ids', () => {
    for (const food of cupboardFoods(small)) expect(cupboardFood(small, food.id)).toEqual(food);
    expect(cupboardFood(small, 'none')).toBeUndefined();
    expect(cupboardFoods({ ...small, mixes: [] }).length).toBeLessThan(cupboardFoods(small).length);
  });
});

describe('a part of the contents', () => {
  it('answers for its foods as all of them do', () => {
    fc.assert(
      fc.property(cupboards, fc.subarray(['oats', 'carrot', 'linseed']), (all, foods) => {
        const part = contentsOfFoods(houseOf(all), foods);
        const ready = weighableOn(DAY, () => undefined);
        expect(totals(part, ready)).toEqual(totals(all, ready).filter((t) => foods.includes(t.food)));
        for (const food of foods)
          for (const needed of [1, 200, Number.MAX_VALUE])
            expect(allocate(part, food, needed, ready)).toEqual(allocate(all, food, needed, ready));
      }),
      { numRuns: draws(2000, 100) },
    );
  });

  it('says of a batch what all of them say: its lots, where they come from and what they cost', () => {
    fc.assert(
      fc.property(cupboards, (all) => {
        for (const batch of all.batches) {
          const part = contentsOfBatch(houseOf(all), batch);
          expect(originOf(batch.id, part)).toEqual(originOf(batch.id, all));
          for (const { lot } of originOf(batch.id, all).poured)
            expect(pricePerGram(lot, part)).toBe(pricePerGram(lot, all));
        }
      }),
      { numRuns: draws(2000, 100) },
    );
  });

  it('leaves out what is used up', () => {
    const first = small.mixes[0];
    if (!first) throw new Error('no mix');
    const part = contentsOfFoods(
      small,
      first.problem.foods.map((f) => f.id),
    );
    expect(part.lots.length).toBeLessThan(small.lots.length);
  });
});

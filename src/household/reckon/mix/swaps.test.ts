/** Swaps and refusals as changes to a mix: shares still make a whole, and what the worker proposed keeps every rule. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Formulation } from '../../../formulation/formulation.ts';
import { loadHighs } from '../../../formulation/solve/highs.ts';
import { demoHousehold } from '../../demo.ts';
import type { Mix } from '../../model.ts';
import { loadReference } from '../../reference-file.ts';
import { broughtIn, notRefusing, refusing, withDropOne, withSwap } from './swaps.ts';

const reference = loadReference();
const highs = await loadHighs();
const house = demoHousehold();
const demo = house.mixes[0]!;
const sum = (shares: Mix['shares']) => Object.values(shares).reduce((a, b) => a + b, 0);

/** The demonstration mix in range, and the swaps of a few of its foods. */
function balanced() {
  const formulation = new Formulation(demo.problem, { reference, highs });
  const best = formulation.solve();
  if (best.status !== 'optimal') throw new Error('the demonstration mix has no answer');
  const foods = ['rolled-oats', 'millet', 'lentils-raw-dry'];
  const found = formulation.substitutes(best.shares, { foods, perFood: 2 });
  formulation.dispose();
  return { shares: best.shares, found };
}

describe('a swap', () => {
  const { shares, found } = balanced();
  const mix: Mix = { ...demo, shares };

  test('keeps every rule of the mix it leads to, whether the other food is its own or of the tables', () => {
    const kinds = new Set<string>();
    for (const { food, swaps } of found) {
      for (const swap of swaps) {
        const next = withSwap(mix, shares, food, swap);
        kinds.add(swap.ref === undefined ? 'own' : 'table');
        expect(next.shares[food]).toBe(0);
        expect(sum(next.shares)).toBeCloseTo(100, 9);
        const formulation = new Formulation(next.problem, { reference, highs });
        expect(formulation.evaluate(next.shares).breaches).toEqual([]);
        formulation.dispose();
      }
    }
    expect([...kinds].sort()).toEqual(['own', 'table']);
  });

  test('adds a food of the tables once, and leaves a food that is there where it stands', () => {
    const swap = { ref: 'sr28:20004', name: 'Barley', group: 'seed', share: 4 };
    const once = withSwap(mix, shares, 'millet', swap);
    expect(once.problem.foods).toHaveLength(mix.problem.foods.length + 1);
    expect(once.shares['sr28-20004']).toBe(4);
    const again = withSwap(once, once.shares, 'maize', swap);
    expect(again.problem.foods).toHaveLength(once.problem.foods.length);
    expect(again.shares['sr28-20004']).toBe(8);
  });

  test('lets go of the food that is gone, and of no other', () => {
    const held = withSwap({ ...mix, held: ['millet', 'maize'] }, shares, 'millet', {
      id: 'linseed',
      name: '',
      share: 3,
    });
    expect(held.held).toEqual(['maize']);
  });

  test('whatever is swapped, the shares make a whole and the others keep their proportions', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('millet', 'maize'),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (food, share) => {
          const next = withSwap(demo, demo.shares, food, { id: 'linseed', name: '', share });
          expect(sum(next.shares)).toBeCloseTo(100, 9);
          expect(next.shares.linseed).toBeCloseTo(5 + share, 9);
          expect(next.shares['brown-rice']).toBeCloseTo(next.shares['sesame-seed']!, 9);
        },
      ),
    );
  });

  test('a food of the mix brings in nothing; one of the tables comes with its number and group', () => {
    expect(broughtIn({ name: 'Millet' })).toBeUndefined();
    expect(broughtIn({ ref: 'sr28:20004', name: 'Barley', group: 'seed' })).toEqual({
      id: 'sr28-20004',
      ref: 'sr28:20004',
      name: 'Barley',
      group: 'seed',
    });
  });
});

test('the wish to be safe is written and taken back without a trace', () => {
  const safe = withDropOne(demo, true);
  expect(safe.problem.drop_one).toBe(true);
  expect(JSON.stringify(withDropOne(safe, false))).toBe(JSON.stringify(demo));
});

test('a refusal is written once and taken back', () => {
  const animal = house.animals[0]!;
  const refuses = refusing(refusing(animal, 'millet'), 'millet');
  expect(refuses.refuses).toEqual(['millet']);
  expect(notRefusing(refuses, 'millet')).toEqual(animal);
});

/** One base for several animals, as it is weighed: whole steps, whole batch, nothing lost to rounding unseen. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SharedMix } from '../../../formulation/advice/shared-base.ts';
import { forOneOf } from '../../../formulation/problem/for-animals.ts';
import { PROFILES } from '../../../targets/profiles.ts';
import { demoHousehold } from '../../demo.ts';
import { bringingOf, eatersOf } from './eaters.ts';
import { portionsNear, sharingEaters, weighSharing } from './sharing.ts';

const house = demoHousehold();
const demo = house.mixes[0]!;
const bramble = house.animals[0]!;

describe('the eaters', () => {
  const other = { ...bramble, id: 'other', name: 'Hazel', profileId: 'hamster-nrc' };
  const animals = [bramble, other];
  const mix = { ...demo, animalIds: [bramble.id, other.id] };
  const eaters = sharingEaters(mix, eatersOf(mix, bringingOf({ ...house, animals }, mix, PROFILES)), animals);
  const nutrients = mix.problem.rules.filter((r) => 'nutrient' in r || 'ratio' in r);

  test('the one with the target of the mix brings the rules of the mix, and keeps them all', () => {
    expect(eaters[0]!.rules).toEqual(nutrients);
    const own = forOneOf(mix.problem, eaters[0]!, eaters).rules;
    expect(own).toEqual(mix.problem.rules);
  });

  test('the one with another target is free of the nutrient rules of the mix, and bound by its split', () => {
    const rules = forOneOf(mix.problem, eaters[1]!, eaters).rules;
    expect(rules.filter((r) => 'group' in r)).toEqual(mix.problem.rules.filter((r) => 'group' in r));
    const protein = mix.problem.rules.find((r) => 'nutrient' in r && r.nutrient === 'PROCNT')!;
    expect(rules).not.toContainEqual(protein);
    expect(rules.length).toBeGreaterThan(4);
  });
});

function shared(base: Record<string, number>, additions: Record<string, number>): SharedMix {
  const animal = { id: 'a', name: 'A', additions, shares: base, cost: { different: 0, further: 0 } };
  return {
    status: 'shared',
    base,
    animals: [animal],
    weighings: Object.keys(additions).length,
    weight: 0,
    one_mix: null,
    unverified: [],
    proved: true,
    notes: [],
    sentence: '',
  };
}
const problem = (batch: number, step: number) => ({
  ...demo.problem,
  batch_grams: batch,
  scale_step_grams: step,
});

describe('what is weighed', () => {
  const base = fc
    .array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 })
    .map((parts) => {
      const total = parts.reduce((a, b) => a + b, 0);
      return Object.fromEntries(parts.map((p, i) => [`f${i}`, (100 * p) / total]));
    });
  const scale = fc.constantFrom([300, 1], [250, 0.1], [100, 5], [37.5, 0.5]);

  test('the base is the whole batch in whole steps, each food within a step of its share', () => {
    fc.assert(
      fc.property(base, scale, (shares, [batch, step]) => {
        const { base: grams } = weighSharing(shared(shares, {}), problem(batch!, step!));
        const total = Object.values(grams).reduce((a, b) => a + b, 0);
        expect(total).toBeCloseTo(batch!, 9);
        for (const [id, share] of Object.entries(shares)) {
          const weighed = grams[id] ?? 0;
          expect(Math.abs(weighed / step! - Math.round(weighed / step!))).toBeLessThan(1e-6);
          expect(Math.abs(weighed - (share * batch!) / 100)).toBeLessThan(step! + 1e-6);
        }
      }),
    );
  });

  test('additions are whole steps, one at least, and rounding is told', () => {
    const at = (per100: number, step: number) =>
      weighSharing(shared({ f: 100 }, { g: per100 }), problem(300, step)).portions[0]!;
    expect(at(2, 1)).toMatchObject({
      rounded: false,
      additions: [{ food: 'g', per100: 2, inBatch: 6, weighed: 6 }],
    });
    expect(at(2.1, 1)).toMatchObject({ rounded: true, additions: [{ weighed: 6 }] });
    expect(at(0.01, 1)).toMatchObject({ rounded: true, additions: [{ weighed: 1 }] });
    expect(at(2.1, 0.1)).toMatchObject({ rounded: false, additions: [{ weighed: 6.3 }] });
  });

  test('shares as weighed make a whole, a food of the base that is added to as well counted once', () => {
    const view = weighSharing(shared({ f: 50, g: 50 }, { g: 10 }), problem(300, 1));
    const { sharesAsWeighed } = view.portions[0]!;
    expect(sharesAsWeighed.f).toBeCloseTo((100 * 150) / 330, 9);
    expect(sharesAsWeighed.g).toBeCloseTo((100 * 180) / 330, 9);
  });
});

test('steps near by are tried, the nearest first, and never less than one step', () => {
  const mix = shared({ f: 100 }, { g: 2.1, h: 0.1 });
  const tried = portionsNear(mix, problem(300, 1), 0);
  expect(tried[0]).toEqual(weighSharing(mix, problem(300, 1)).portions[0]);
  const grams = tried.map((p) => p.additions.map((a) => a.weighed));
  expect(grams).toContainEqual([7, 1]);
  expect(grams).toContainEqual([5, 2]);
  const off = grams.map(([g, h]) => Math.abs(g! - 6) + (h! - 1));
  expect(Math.max(...off.slice(0, 5))).toBeLessThanOrEqual(1);
  expect(grams.every(([, h]) => h! >= 1)).toBe(true);
  expect(portionsNear(shared({ f: 100 }, {}), problem(300, 1), 0)).toHaveLength(1);
});

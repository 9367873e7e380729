import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draws } from '../../../../test/draws.ts';
import type { Seen, Trial } from '../../../care/model.ts';
import { applyCautions } from '../../../formulation/amounts/apply-cautions.ts';
import { PROFILES } from '../../../targets/profiles.ts';
import { demoHousehold } from '../../demo.ts';
import type { Mix } from '../../model.ts';
import { loadReference } from '../../reference-file.ts';
import { bringingOf, eatersOf, otherTarget, speciesFed, withAnimals } from './eaters.ts';

const demo = demoHousehold();
const { mixes, animals } = demo;
const mix = mixes[0]!;
const bramble = animals[0]!;
const nut = { ...bramble, id: 'nut', name: 'Nut', profileId: 'hamster-nrc', refuses: ['millet'] };

test('a single animal brings its refusals; the target is that of the mix', () => {
  const alone = { ...mix, animalIds: ['nut'] };
  const bringing = bringingOf({ ...demo, animals: [bramble, nut] }, alone, PROFILES);
  expect(eatersOf(alone, bringing)).toMatchObject([{ id: 'nut', rules: [], refuses: ['millet'] }]);
  const fed = withAnimals(alone, bringing);
  expect(fed.out).toMatchObject({ millet: [{ why: 'list', animal: { name: 'Nut' } }] });
  expect(Object.keys(fed.out)).toEqual(['millet']);
  expect(fed.mix.shares.millet).toBe(0);
  expect(fed.mix.problem.rules).toEqual(mix.problem.rules);
  expect(otherTarget(alone, [bramble, nut], PROFILES)).toMatchObject({
    name: 'Nut',
    profile: { id: 'hamster-nrc' },
  });
  expect(otherTarget(mix, [bramble, nut], PROFILES)).toBeUndefined();
});

test('of several animals those with another target bring its rules too', () => {
  const both = { ...mix, animalIds: [bramble.id, 'nut'] };
  const bringing = bringingOf({ ...demo, animals: [bramble, nut] }, both, PROFILES);
  const { eaters } = bringing;
  expect(eaters[0]!.rules).toEqual([]);
  expect(eaters[1]!.rules.length).toBeGreaterThan(0);
  const { problem } = withAnimals(both, bringing).mix;
  expect(problem.rules.slice(0, mix.problem.rules.length)).toEqual(mix.problem.rules);
  expect(problem.rules.length).toBeGreaterThan(mix.problem.rules.length);
  expect(otherTarget(both, [bramble, nut], PROFILES)).toBeUndefined();
});

test('an animal that is gone eats of no mix, and its target binds none', () => {
  const both = { ...mix, animalIds: [bramble.id, 'nut'] };
  const gone = { ...nut, gone: { how: 'died', on: '2026-03-01' } } as const;
  const bringing = bringingOf({ ...demo, animals: [bramble, gone] }, both, PROFILES);
  expect(bringing.eaters.map((e) => e.name)).toEqual(['Bramble']);
  expect(withAnimals(both, bringing).out).toEqual({});
  expect(otherTarget(both, [{ ...bramble, gone: gone.gone }, nut], PROFILES)?.name).toBe('Nut');
});

test('an animal with diabetes brings the cautions against sugar, to the mix and to the pages of foods', () => {
  const ill = { ...bramble, conditions: [{ what: 'diabetes', since: '2026-01-01' }] } as const;
  const { problem } = withAnimals(mix, bringingOf({ ...demo, animals: [ill] }, mix, PROFILES)).mix;
  expect(problem.species).toBe('golden hamster, prone to diabetes');
  expect(speciesFed(mix, [ill])).toBe(problem.species);
  expect(speciesFed(mix, [bramble])).toBe('golden hamster');
  expect(speciesFed(undefined, [ill])).toBeUndefined();
  const raisins = { ...problem, foods: [{ id: 'raisins', name: 'Raisins' }] };
  const most = (species: string | undefined) =>
    applyCautions({ ...raisins, cautions: 'apply', species }, loadReference()).caps.each.get(0)?.max;
  expect(most(problem.species)).toBe(0.5);
  expect(most('golden hamster')).toBeGreaterThan(0.5);
});

describe('what trials say', () => {
  const millet = mix.problem.foods.find((f) => f.id === 'millet')!;
  const trial = (animalId: string, food: string, ...seen: Seen[]): Trial => ({
    id: 't',
    animalId,
    food,
    name: 'Millet',
    days: [],
    offerings: seen.map((s, k) => ({ on: `2026-03-0${k + 1}`, seen: s })),
  });
  const hazel = { ...bramble, id: 'hazel', name: 'Hazel', refuses: [] };
  const house = (...trials: Trial[]) => ({ ...demo, animals: [bramble, hazel], trials });
  const fed = (all: ReturnType<typeof house>, m: Mix) => withAnimals(m, bringingOf(all, m, PROFILES));
  const hers = { ...mix, animalIds: ['hazel'] };

  test('a refused food is out of the mixes of that animal, under every id, and out of advice', () => {
    const all = house(trial('hazel', millet.ref!, 'left', 'left', 'left'));
    const out = fed(all, hers);
    expect(out.out.millet).toMatchObject([{ why: 'refused', trial: 't', animal: { name: 'Hazel' } }]);
    expect(out.mix.shares.millet).toBe(0);
    expect(out.mix.problem.foods.find((f) => f.id === 'millet')?.refused).toBe(true);
    expect(out.mix.problem.not_offered).toContain(millet.ref);
    expect(fed(all, mix).out).toEqual({});
    // Added anew: by its number, or as a food of the keeper's own that is called the same.
    const foods = [
      { id: 'x', ref: millet.ref },
      { id: 'y', name: 'millet', composition: {} },
      { id: 'z', name: 'Barley', composition: {} },
    ];
    const anew = { ...hers, problem: { ...mix.problem, foods }, shares: { x: 40, y: 30, z: 30 } };
    expect(Object.keys(fed(all, anew).out)).toEqual(['x', 'y']);
    expect(fed(all, anew).mix.shares).toEqual({ x: 0, y: 0, z: 30 });
  });

  test('an upset food is out of every mix, with or without animals, in all its forms', () => {
    const all = house({ ...trial('hazel', 'sr28:11124', 'eaten', 'upset'), name: 'Carrot' });
    for (const m of [hers, mix, { ...mix, animalIds: [] }]) {
      expect(fed(all, m).out['carrot-dried']).toMatchObject([{ why: 'upset', animal: { name: 'Hazel' } }]);
      expect(fed(all, m).mix.shares['carrot-dried']).toBe(0);
    }
    const bringing = bringingOf(all, mix, PROFILES);
    expect(eatersOf(mix, bringing)[0]?.refuses).toEqual(['carrot-dried']);
  });

  test('with a reason it is fed to the others, never to that animal', () => {
    const upset = trial('hazel', millet.ref!, 'upset');
    const all = house({ ...upset, others: { note: 'They have long eaten it.', on: '2026-03-02' } });
    expect(fed(all, mix).out).toEqual({});
    expect(fed(all, { ...mix, animalIds: [] }).out).toEqual({});
    expect(Object.keys(fed(all, hers).out)).toEqual(['millet']);
    expect(Object.keys(fed(all, { ...mix, animalIds: [bramble.id, 'hazel'] }).out)).toEqual(['millet']);
  });

  test('whatever id, case and signs it is added anew with, a refused food has no share', () => {
    const all = house(trial('hazel', millet.ref!, 'left', 'left', 'left'));
    const id = fc.stringMatching(/^[a-z0-9]{1,12}$/);
    const named = fc.oneof(
      fc.constantFrom({ ref: millet.ref }, { ref: millet.ref, name: 'Anything' }),
      fc
        .tuple(fc.constantFrom('Millet', 'millet', 'MILLET'), fc.constantFrom('', ' ', ',', '  .'))
        .map(([name, sign]) => ({ name: `${sign}${name}${sign}`, composition: {} })),
    );
    fc.assert(
      fc.property(id, named, (made, food) => {
        const other = { id: 'other', name: 'Barley', composition: {} };
        const foods = [{ id: `x-${made}`, ...food }, other];
        const anew = {
          ...hers,
          problem: { ...mix.problem, foods },
          shares: { [`x-${made}`]: 60, other: 40 },
        };
        const { mix: eaten, out } = fed(all, anew);
        expect(Object.keys(out)).toEqual([`x-${made}`]);
        expect(eaten.shares).toEqual({ [`x-${made}`]: 0, other: 40 });
        expect(eaten.problem.foods.map((f) => f.refused)).toEqual([true, undefined]);
      }),
      { numRuns: draws(400, 40) },
    );
  });

  test('a pellet that is out is fed no more, in its place among what is fed beside', () => {
    const [pellet] = mix.problem.beside;
    const open = {
      ...hers,
      problem: { ...mix.problem, beside: [{ ...pellet!, share_min: 40, share_max: 60 }] },
    };
    const all = house({ ...trial('hazel', pellet!.id, 'upset'), name: pellet!.name ?? 'Pellet' });
    const { problem } = fed(all, open).mix;
    expect(problem.beside[0]).toMatchObject({ id: pellet!.id, share_of_ration: 0 });
    expect(problem.beside[0]).not.toHaveProperty('share_min');
    expect(fed(house(), open).mix.problem.beside[0]).toMatchObject({ share_min: 40 });
  });

  test('taken back, or with a new verdict, it comes back', () => {
    expect(fed(house(), hers).mix).toEqual(hers);
    const old = trial('hazel', millet.ref!, 'left', 'left', 'left');
    const eaten = Array.from({ length: 6 }, (): Seen => 'eaten');
    const again = { ...trial('hazel', 'millet', ...eaten), id: 'u' };
    const later = {
      ...again,
      offerings: again.offerings.map((o) => ({ ...o, on: o.on.replace('-03-', '-04-') })),
    };
    expect(fed(house(old, later), hers).out).toEqual({});
  });
});

test('an animal that is gone refuses nothing any more; what upset it stays out until the keeper goes ahead', () => {
  const gone = { ...nut, gone: { how: 'died', on: '2026-03-01' } } as const;
  const upset: Trial = {
    id: 't',
    animalId: 'nut',
    food: 'sr28:11124',
    name: 'Carrot',
    days: [],
    offerings: [{ on: '2026-02-01', seen: 'upset' }],
  };
  const both = { ...mix, animalIds: [bramble.id, 'nut'] };
  const out = (trial: Trial) =>
    Object.keys(
      withAnimals(both, bringingOf({ ...demo, animals: [bramble, gone], trials: [trial] }, both, PROFILES))
        .out,
    );
  expect(out(upset)).toEqual(['carrot-dried']);
  expect(out({ ...upset, others: { note: 'Fine.', on: '2026-03-02' } })).toEqual([]);
});

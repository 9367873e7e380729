import { expect, test } from 'vitest';
import { applyCautions } from '../../../formulation/amounts/apply-cautions.ts';
import { PROFILES } from '../../../targets/profiles.ts';
import { demoHousehold } from '../../demo.ts';
import { loadReference } from '../../reference-file.ts';
import { eatersOf, otherTarget, speciesFed, withAnimals } from './eaters.ts';

const { mixes, animals } = demoHousehold();
const mix = mixes[0]!;
const bramble = animals[0]!;
const nut = { ...bramble, id: 'nut', name: 'Nut', profileId: 'hamster-nrc', refuses: ['millet'] };

test('a single animal brings its refusals; the target is that of the mix', () => {
  const alone = { ...mix, animalIds: ['nut'] };
  const eaters = eatersOf(alone, [bramble, nut], PROFILES);
  expect(eaters).toMatchObject([{ id: 'nut', rules: [] }]);
  const fed = withAnimals(alone, eaters);
  expect(fed.refusedBy).toEqual({ millet: ['Nut'] });
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
  const eaters = eatersOf(both, [bramble, nut], PROFILES);
  expect(eaters[0]!.rules).toEqual([]);
  expect(eaters[1]!.rules.length).toBeGreaterThan(0);
  const { problem } = withAnimals(both, eaters).mix;
  expect(problem.rules.slice(0, mix.problem.rules.length)).toEqual(mix.problem.rules);
  expect(problem.rules.length).toBeGreaterThan(mix.problem.rules.length);
  expect(otherTarget(both, [bramble, nut], PROFILES)).toBeUndefined();
});

test('an animal that is gone eats of no mix, and its target binds none', () => {
  const both = { ...mix, animalIds: [bramble.id, 'nut'] };
  const gone = { ...nut, gone: { how: 'died', on: '2026-03-01' } } as const;
  const eaters = eatersOf(both, [bramble, gone], PROFILES);
  expect(eaters.map((e) => e.name)).toEqual(['Bramble']);
  expect(withAnimals(both, eaters).refusedBy).toEqual({});
  expect(otherTarget(both, [{ ...bramble, gone: gone.gone }, nut], PROFILES)?.name).toBe('Nut');
});

test('an animal with diabetes brings the cautions against sugar, to the mix and to the pages of foods', () => {
  const ill = { ...bramble, conditions: [{ what: 'diabetes', since: '2026-01-01' }] } as const;
  const { problem } = withAnimals(mix, eatersOf(mix, [ill], PROFILES)).mix;
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

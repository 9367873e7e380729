/** Minerals and vitamins against a target: what is known, what only the pellet brings, what cannot be told. */
import { expect, test } from 'vitest';
import type { Evaluation, NutrientLine } from '../../../formulation/problem/result.ts';
import type { TargetProfile } from '../../../targets/profile.ts';
import { PROFILES } from '../../../targets/profiles.ts';
import { micronutrientRows, usualComparison } from './micronutrients.ts';

/** The ration is half mix, half pellet; each interval per 100 g. */
function line(mix: [number, number], pellet: [number, number], known: [number, number]): NutrientLine {
  const half = (a: number, b: number) => (a + b) / 2;
  return {
    mix: mix[0],
    ration: half(mix[0], pellet[0]),
    low: half(mix[0], pellet[0]),
    high: half(mix[1], pellet[1]),
    coverage: half(known[0], known[1]),
    low_mix: mix[0],
    high_mix: mix[1],
    coverage_mix: known[0],
    sd_mix: 0,
    sd_ration: 0,
  };
}
const at = (nutrients: Evaluation['nutrients']) => ({ nutrients }) as Evaluation;
const target: TargetProfile = {
  id: 't',
  name: 't',
  species: 'hamster',
  lifeStage: 'adult',
  fibre: 'none',
  about: '',
  bounds: [
    { nutrient: 'CA', min: 500, basis: 'as fed', source: 's' },
    { nutrient: 'VITD', min: 1, basis: 'as fed', source: 's' },
    { nutrient: 'ZN', min: 1, max: 5, basis: 'DM', source: 's' },
    { nutrient: 'ID', min: 10, basis: 'as fed', source: 's' },
  ],
};
const row = (evaluation: Evaluation, key: string) =>
  micronutrientRows(evaluation, 0.5, target).find((r) => r.key === key)!;

test('what is fed beside the mix follows from ration and mix', () => {
  const ca = row(at({ CA: line([100, 100], [1000, 1000], [100, 100]) }), 'CA');
  expect(ca.pellet).toEqual({ low: 1000, high: 1000, coverage: 100 });
  expect(ca.brought).toEqual({ mix: 50, pellet: 500 });
  expect(ca).toMatchObject({ judgement: 'meets', onlyPellet: true });
});

test('a target inside the interval cannot be told, and a target above all of it is missed', () => {
  expect(row(at({ VITD: line([0, 0], [0, 10], [100, 0]) }), 'VITD').judgement).toBe('untold');
  expect(row(at({ CA: line([100, 100], [100, 200], [100, 0]) }), 'CA').judgement).toBe('short');
});

test('a target of which nothing is known is shown, and not as short', () => {
  const iodine = row(at({}), 'ID');
  expect(iodine.judgement).toBe('untold');
  expect(iodine.ration.coverage).toBe(0);
  expect(iodine.onlyPellet).toBe(false);
});

test('a target on dry matter is compared on dry matter', () => {
  const water = line([10, 10], [10, 10], [100, 100]);
  const zn = row(at({ WATER: water, ZN: line([4.5, 4.5], [4.5, 4.5], [100, 100]) }), 'ZN');
  expect(zn.ration.low).toBeCloseTo(5, 12);
  expect(zn.pellet!.low).toBeCloseTo(5, 12);
  expect(zn.judgement).toBe('meets');
});

test('calcium to phosphorus is least calcium over most phosphorus, and the other way', () => {
  const ratio = row(
    at({ CA: line([100, 100], [300, 500], [100, 0]), P: line([200, 200], [200, 400], [100, 0]) }),
    'CA:P',
  );
  expect(ratio.ration.low).toBeCloseTo(200 / 300, 12);
  expect(ratio.ration.high).toBeCloseTo(300 / 200, 12);
});

test('a target per 1000 kcal is compared with the energy, and cannot be told where energy is missing', () => {
  const linoleic = { nutrient: 'F18D2CN6', min: 2, max: 4, basis: 'per 1000 kcal', source: 's' } as const;
  const perEnergy = { ...target, bounds: [linoleic] };
  const fat = line([1, 1], [0.5, 0.5], [100, 100]);
  const told = (energy: NutrientLine) =>
    micronutrientRows(at({ F18D2CN6: fat, ENERC_KCAL: energy }), 0.5, perEnergy)[0]!;
  const row = told(line([400, 400], [200, 200], [100, 100]));
  expect(row.judgement).toBe('meets');
  for (const said of [row.ration, row.mix, row.pellet]) expect(said?.low).toBeCloseTo(2.5, 12);
  expect(row.basis).toBe('per 1000 kcal');
  expect(told(line([400, 400], [0, 500], [100, 0])).judgement).toBe('untold');
});

test('a least and a most on different bases are two rows', () => {
  const both = {
    ...target,
    bounds: [
      { nutrient: 'SE', min: 10, basis: 'as fed', source: 's' },
      { nutrient: 'SE', max: 30, basis: 'DM', source: 's' },
    ],
  } as const;
  const rows = micronutrientRows(
    at({ SE: line([28, 28], [28, 28], [100, 100]), WATER: line([10, 10], [10, 10], [100, 100]) }),
    0.5,
    both,
  );
  expect(rows.map((r) => [r.basis, r.judgement])).toEqual([
    ['as fed', 'meets'],
    ['DM', 'over'],
  ]);
});

test('compared with the mix’s own target where it binds minerals, else with the fullest of its species', () => {
  const named = (id: string) => PROFILES.find((p) => p.id === id)!;
  expect(usualComparison(named('hamster-adult-limits'), PROFILES)?.id).toBe('hamster-adult-limits');
  expect(usualComparison(named('hamster-adult-crude'), PROFILES)?.id).toBe('hamster-nrc');
  expect(usualComparison(named('mouse-nrc-breeding'), PROFILES)?.id).toBe('mouse-nrc-breeding');
  expect(usualComparison({ ...named('hamster-adult'), species: 'degu' }, PROFILES)?.id).toBe('hamster-nrc');
});

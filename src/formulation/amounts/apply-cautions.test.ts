/** Foods on the caution list are blocked or capped with a reason, and only a cap can be lifted, on record. */
import { expect, test } from 'vitest';
import { loadReference } from '../../household/reference-file.ts';
import { Formulation } from '../formulation.ts';
import { parseProblem } from '../problem/parse.ts';
import { ProblemError } from '../problem/problem.ts';
import { loadHighs } from '../solve/highs.ts';

const reference = loadReference();
const highs = await loadHighs();

function posed(json: object) {
  return new Formulation(parseProblem(json, reference).problem, { reference, highs });
}

const OATS = { id: 'oats', ref: 'sr28:20038' };
const ALMOND = { id: 'almond', ref: 'sr28:12061', want: 50 };
const ONION = { id: 'onion', ref: 'sr28:11284', want: 50 };
const base = { rules: [], cautions: 'apply' };

test('a food never to be fed stays out, whatever is wanted', () => {
  const result = posed({ ...base, foods: [OATS, ONION] }).solve();
  expect(result.status === 'optimal' && result.shares).toEqual({ oats: 100, onion: 0 });
  const [note] = result.cautions;
  expect(note).toMatchObject({ food: 'onion', applied: 'blocked', severity: 'never', pointer: '/foods/1' });
  expect(note!.reason.length).toBeGreaterThan(20);
  expect(note!.source.length).toBeGreaterThan(5);
});

test('no override opens a food never to be fed', () => {
  const override = { caution: 'onion-family', note: 'I insist', on: '2026-11-25' };
  const result = posed({ ...base, foods: [OATS, { ...ONION, override }] }).solve();
  expect(result.status === 'optimal' && result.shares.onion).toBe(0);
});

test('a limited food is capped, its spans too, until the keeper lifts the limit on record', () => {
  const capped = posed({ ...base, foods: [OATS, ALMOND] }).solve();
  if (capped.status !== 'optimal') throw new Error('expected a mix');
  const limit = capped.cautions[0]!.max_share!;
  expect(capped.cautions[0]).toMatchObject({ food: 'almond', applied: 'capped' });
  expect(capped.shares.almond).toBeCloseTo(limit, 6);
  expect(capped.spans.almond![1]).toBeCloseTo(limit, 6);
  const override = { caution: 'almond', note: 'the vet said so', on: '2026-11-25' };
  const lifted = posed({ ...base, foods: [OATS, { ...ALMOND, override }] }).solve();
  expect(lifted.status === 'optimal' && lifted.shares.almond).toBeCloseTo(50, 6);
  expect(lifted.cautions[0]).toMatchObject({ applied: 'overridden' });
});

test('a share beyond the limit collides with the caution, which is named and never loosened', () => {
  const result = posed({ ...base, foods: [OATS, { ...ALMOND, min: 30 }] }).solve();
  if (result.status !== 'infeasible') throw new Error('expected a collision');
  expect(result.conflict.map((c) => c.pointer).sort()).toEqual(['/foods/1', '/foods/1/min']);
  expect(result.verdict).toContain('almond');
  expect(result.remedies.map((r) => (r.kind === 'loosen' ? r.pointer : r.kind))).not.toContain('/foods/1');
});

test('without "apply" cautions are only named', () => {
  const result = posed({ rules: [], foods: [OATS, ONION] }).solve();
  expect(result.status === 'optimal' && result.shares.onion).toBeCloseTo(50, 6);
  expect(result.cautions).toMatchObject([{ food: 'onion', applied: 'noted' }]);
});

test('a caution for dwarf hamsters holds for them alone', () => {
  const foods = [OATS, { id: 'raisins', ref: 'sr28:09298', want: 50 }];
  const share = (species: string) => {
    const result = posed({ ...base, foods, species }).solve();
    return result.status === 'optimal' ? result.shares.raisins! : Number.NaN;
  };
  expect(share('dwarf hamster')).toBeLessThan(share('golden hamster'));
});

test('nothing but foods never to be fed is bad input, with the way out', () => {
  expect(() => posed({ ...base, foods: [ONION] })).toThrow(ProblemError);
  expect(() => posed({ ...base, foods: [ONION] })).toThrow(/\/foods.*add a food/);
});

test('no advice names a food that is blocked or capped', () => {
  // Only something very fat helps; almonds and other nuts would, and may not be named.
  const result = posed({ ...base, foods: [OATS], rules: [{ nutrient: 'FAT', min: 15 }] }).solve();
  if (result.status !== 'infeasible') throw new Error('expected a collision');
  const added = result.remedies.flatMap((r) => (r.kind === 'add' ? [r.food] : []));
  expect(added.length).toBeGreaterThan(0);
  for (const food of added) {
    const check = posed({ ...base, foods: [OATS, food] }).solve();
    expect(check.cautions.filter((c) => c.applied !== 'noted')).toEqual([]);
  }
});

test('foods that one caution is about keep its cap together', () => {
  const pulse = (id: string, ref: string) => ({ id, ref, want: 30 });
  const pulses = [pulse('lentils', 'sr28:16069'), pulse('peas', 'sr28:16085')];
  const result = posed({ ...base, rules: [], foods: [OATS, ...pulses] }).solve();
  if (result.status !== 'optimal') throw new Error(result.verdict);
  const cap = result.cautions.find((c) => c.food === 'lentils')?.max_share ?? Number.NaN;
  expect((result.shares.lentils ?? 0) + (result.shares.peas ?? 0)).toBeCloseTo(cap, 6);
  expect(result.binding).toMatchObject([{ pointer: '/cautions' }]);
  const asked = pulses.map((f) => ({ ...f, min: cap - 1 }));
  const collided = posed({ ...base, rules: [], foods: [OATS, ...asked] }).solve();
  if (collided.status !== 'infeasible') throw new Error('expected a collision');
  expect(collided.conflict.map((c) => c.pointer)).toContain('/cautions');
  expect(collided.remedies.map((r) => (r.kind === 'loosen' ? r.pointer : r.kind))).not.toContain('/cautions');
  // Lifted for one of them by the keeper, the other alone keeps to it.
  const lifted = {
    ...pulse('lentils', 'sr28:16069'),
    override: { caution: 'low-lectin-pulses-raw', note: 'cooked', on: '2026-03-14' },
  };
  const one = posed({ ...base, rules: [], foods: [OATS, lifted, pulses[1]] }).solve();
  if (one.status !== 'optimal') throw new Error(one.verdict);
  expect(one.shares.lentils).toBeGreaterThan(cap);
  expect(one.shares.peas).toBeLessThanOrEqual(cap + 1e-6);
});

const BAR = {
  id: 'bar',
  name: 'Oat bar',
  composition: { PROCNT: 12, FAT: 8 },
  ingredients: ['Oats 60 %, dark chocolate, dried onion, avocado powder, no garlic'],
};

test('a food whose own list holds what must not be fed stays out, and is told with the words of its list', () => {
  const result = posed({ ...base, foods: [OATS, { ...BAR, want: 50 }] }).solve();
  expect(result.status === 'optimal' && result.shares).toEqual({ oats: 100, bar: 0 });
  expect(result.cautions.map((c) => [c.food, c.caution, c.found, c.applied, c.listed])).toEqual([
    ['bar', 'onion-family', 'onion', 'blocked', true],
    ['bar', 'avocado', 'avocado', 'blocked', true],
    ['bar', 'chocolate', 'chocolate', 'blocked', true],
  ]);
});

test('what a list denies keeps no food out', () => {
  const ingredients = ['Oats, carob, no garlic. Free from chocolate, onion and avocado.'];
  const result = posed({ ...base, foods: [OATS, { ...BAR, ingredients, want: 50 }] }).solve();
  expect(result.status === 'optimal' && result.shares.bar).toBeCloseTo(50, 6);
  expect(result.cautions).toEqual([]);
});

test('a list opens to the keeper who goes ahead with all that is in it, on record, and closes when more turns up', () => {
  const override = {
    caution: 'chocolate',
    also: ['onion-family', 'avocado'],
    note: 'traces',
    on: '2026-11-25',
  };
  const share = (food: object) => {
    const result = posed({ ...base, foods: [OATS, { ...BAR, want: 50, ...food }] }).solve();
    return result.status === 'optimal' ? result.shares.bar : undefined;
  };
  expect(share({ override })).toBeCloseTo(50, 6);
  expect(share({ override: { ...override, also: ['avocado'] } })).toBe(0);
  expect(share({ override, ingredients: [...BAR.ingredients, 'macadamia'] })).toBe(0);
  // What the name says of the food itself no record opens.
  expect(share({ override, name: 'Chocolate bar' })).toBe(0);
});

test('what is fed beside is told of its list too', () => {
  const beside = [{ ...BAR, share_of_ration: 10 }];
  const { cautions } = posed({ ...base, foods: [OATS], beside }).solve();
  expect(cautions.map((c) => [c.pointer, c.food, c.caution, c.applied])).toEqual([
    ['/beside/0', 'bar', 'onion-family', 'noted'],
    ['/beside/0', 'bar', 'avocado', 'noted'],
    ['/beside/0', 'bar', 'chocolate', 'noted'],
  ]);
});

/** What a record names, and what of it must be there. */

import { describe, expect, it } from 'vitest';
import { demo, mix, version } from '../../../test/household/demo-version.ts';
import { isReferenceNumber } from '../../foods/reference-number.ts';
import type { Batch } from '../../kitchen/model.ts';
import { finishedBatchChange } from './finished-batch.ts';
import { tooFull, tooLarge, tooMany } from './quotas.ts';
import { foodOutOfProblem, foodsNamedBy, newReferences, referencesOf } from './references.ts';

const batch: Batch = {
  id: 'b',
  mixId: mix.id,
  name: 'March',
  problem: mix.problem,
  shares: { millet: 60 },
  order: ['millet'],
  grams: 300,
  pours: [
    {
      food: 'millet',
      lots: [{ lot: 'l1', grams: 15 }],
      target: 15,
      grams: 15,
      at: '2026-03-14T10:00:00Z',
    },
  ],
  animalIds: ['demo-animal'],
  startedAt: '2026-03-14T09:30:00Z',
};

describe('a record names', () => {
  it('its animals, profile, mix, lots and foods, each with where it stands', () => {
    expect(referencesOf('mixes', mix)).toEqual([
      { kind: 'animals', id: 'demo-animal', field: '/animalIds/0' },
      { kind: 'profiles', id: mix.profileId, field: '/profileId' },
    ]);
    expect(referencesOf('versions', version)).toEqual([{ kind: 'mixes', id: mix.id, field: '/mixId' }]);
    expect(referencesOf('batches', batch)).toEqual([
      { kind: 'mixes', id: mix.id, field: '/mixId' },
      { kind: 'animals', id: 'demo-animal', field: '/animalIds/0' },
      { kind: 'lots', id: 'l1', field: '/pours/0/lots/0/lot' },
    ]);
    const [animal] = demo.animals;
    if (!animal) throw new Error('no animal');
    expect(referencesOf('animals', { ...animal, refuses: ['millet'] })[1]).toEqual({
      kind: 'food',
      id: 'millet',
      field: '/refuses/0',
    });
    expect(
      referencesOf('kitchen', {
        id: 'kitchen',
        driedAtHome: [{ food: 'carrot', fresh: 'sr28:11124', moisture: 8 }],
        next: { mixId: 'm', pins: [] },
      }).map((n) => `${n.kind} ${n.id} ${n.field}`),
    ).toEqual([
      'food carrot /driedAtHome/0/food',
      'food sr28:11124 /driedAtHome/0/fresh',
      'mixes m /next/mixId',
    ]);
  });

  it('only what it did not name before as new', () => {
    expect(newReferences('batches', batch, batch)).toEqual([]);
    expect(newReferences('batches', { ...batch, animalIds: ['demo-animal', 'b2'] }, batch)).toEqual([
      { kind: 'animals', id: 'b2', field: '/animalIds/1' },
    ]);
    expect(newReferences('batches', batch, null)).toHaveLength(3);
  });

  it('foods that others may name', () => {
    expect(foodsNamedBy('foods', demo.foods[0] ?? expect.fail())).toEqual(['demo-pellet']);
    expect(foodsNamedBy('mixes', mix)).toEqual(expect.arrayContaining(['millet', 'demo-pellet']));
    expect(foodsNamedBy('kitchen', { id: 'kitchen' })).toEqual([]);
    expect(isReferenceNumber('ifct:A010')).toBe(true);
    expect(isReferenceNumber('millet')).toBe(false);
  });
});

it('a batch has no food that its problem does not have', () => {
  expect(foodOutOfProblem(batch, null)).toBeUndefined();
  const [pour] = batch.pours;
  if (!pour) throw new Error('no pour');
  const odd = { ...batch, pours: [pour, { ...pour, food: 'gravel' }] };
  expect(foodOutOfProblem(odd, null)).toMatchObject({ field: '/pours/1/food' });
  expect(foodOutOfProblem({ ...batch, shares: { 'a/b': 1 } }, null)).toMatchObject({ field: '/shares/a~1b' });
  expect(foodOutOfProblem({ ...batch, order: ['gravel'] }, null)).toMatchObject({ field: '/order/0' });
  expect(foodOutOfProblem(odd, odd)).toBeUndefined();
});

describe('a finished batch', () => {
  const done = { ...batch, finishedAt: '2026-03-14T11:00:00Z' };
  it('is not deleted; one that is weighed may be', () => {
    expect(finishedBatchChange(batch, null)).toBeUndefined();
    expect(finishedBatchChange(done, null)).toMatchObject({ message: expect.stringContaining('"March"') });
  });
  it('changes in what is left of it and in its name', () => {
    expect(finishedBatchChange(batch, done)).toBeUndefined();
    const reordered = JSON.parse(JSON.stringify(Object.fromEntries(Object.entries(done).reverse())));
    const left = { grams: 0, on: '2026-04-01' };
    expect(finishedBatchChange(done, { ...reordered, name: 'M', left })).toBeUndefined();
    expect(finishedBatchChange({ ...done, left }, done)).toBeUndefined();
  });
  it.each([
    ['/pours', { ...done, pours: [] }],
    ['/finishedAt', batch],
    ['/animalIds', { ...done, animalIds: [] }],
    ['/shares', { ...done, shares: { millet: 61 } }],
    ['/problem', { ...done, problem: { ...done.problem, rules: [] } }],
    ['/accepted', { ...done, accepted: { note: 'x', on: '2026-04-01' } }],
    ['/madeBy', { ...done, madeBy: 'Robin' }],
  ])('and not in its %s', (field, after: Batch) => {
    expect(finishedBatchChange(done, after)).toMatchObject({ field });
  });
});

it('a household has room, and says when it has none', () => {
  expect(tooMany('animals', 499)).toBeUndefined();
  expect(tooMany('animals', 500)?.message).toContain('500 animals');
  expect(tooLarge('x'.repeat(150_000))).toBeUndefined();
  expect(tooLarge('€'.repeat(50_001))?.message).toContain('150 kB');
  expect(tooFull(1e8)).toBeUndefined();
  expect(tooFull(1e8 + 1)?.message).toContain('100 MB');
});

import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { put, remove } from '../../test/household/put.ts';
import type { Batch, DryingRun, Kitchen, Lot, Offer } from '../kitchen/model.ts';
import { demoHousehold } from './demo.ts';
import { type FileStore, openStore } from './store.ts';

const folder = folderForEachTest();
let store: FileStore;
beforeEach(async () => {
  store = openStore(join(folder(), 'household.sqlite'));
  await store.putAll(demoHousehold());
});
afterEach(async () => {
  await store.close();
});

const mix = demoHousehold().mixes[0]!;
const lot: Lot = {
  id: 'millet-1',
  food: 'millet',
  name: 'Millet',
  grams: 500,
  form: 'dry',
  boughtOn: '2026-03-01',
  frozen: false,
  cold: [{ kind: 'freeze', from: '2026-03-02', to: '2026-03-06', doneOn: '2026-03-06' }],
};
const offer: Offer = {
  id: 'o',
  food: 'millet',
  seller: 'Invented mill',
  packGrams: 500,
  price: 2,
  form: 'dry',
};
const run: DryingRun = {
  id: 'run',
  lot: 'millet-1',
  device: 'oven',
  celsius: 60,
  startedAt: '2026-03-02T10:00:00Z',
  trays: 2,
  gramsBefore: 400,
  checks: [{ at: '2026-03-02T12:00:00Z', grams: 300 }],
};
const batch: Batch = {
  id: 'batch',
  mixId: mix.id,
  name: 'Batch 1',
  problem: mix.problem,
  shares: mix.shares,
  order: ['millet'],
  grams: 300,
  pours: [
    {
      food: 'millet',
      lots: [{ lot: 'millet-1', grams: 15 }],
      target: 15,
      grams: 15,
      at: '2026-03-20T10:00:00Z',
    },
  ],
  animalIds: mix.animalIds,
  startedAt: '2026-03-20T09:59:00Z',
};
const kitchen: Kitchen = { id: 'kitchen', freezer: { grams: 3000, celsius: -18 } };

async function fill() {
  await put(store, 'lots', lot);
  await put(store, 'offers', offer);
  await put(store, 'dryingRuns', run);
  await put(store, 'batches', batch);
  await put(store, 'kitchen', kitchen);
}

it('gives back the things of the kitchen as they were put', async () => {
  await fill();
  const kept = await store.household();
  expect(kept.lots).toEqual([lot]);
  expect(kept.offers).toEqual([offer]);
  expect(kept.dryingRuns).toEqual([run]);
  expect(kept.batches).toEqual([batch]);
  expect(kept.kitchen).toEqual([kitchen]);
  await put(store, 'lots', { ...lot, openedOn: '2026-03-20' });
  expect((await store.household()).lots).toEqual([{ ...lot, openedOn: '2026-03-20' }]);
});

it('keeps lots that something was taken from, and says where', async () => {
  await fill();
  await expect(remove(store, 'lots', lot.id)).rejects.toThrow(
    'is used by the batch “Batch 1” and a drying run; mark it as no longer used instead',
  );
  await remove(store, 'batches', batch.id);
  await expect(remove(store, 'lots', lot.id)).rejects.toThrow('is used by a drying run');
  await remove(store, 'dryingRuns', run.id);
  await remove(store, 'lots', lot.id);
  await expect(remove(store, 'lots', lot.id)).rejects.toThrow('no pack has the id "millet-1"');
});

it('refuses a new batch for an animal that is not there, and a drying run of no lot', async () => {
  await expect(put(store, 'batches', { ...batch, animalIds: ['nobody'], pours: [] })).rejects.toThrow(
    'no animal has the id "nobody"',
  );
  await expect(put(store, 'dryingRuns', run)).rejects.toThrow('no pack has the id "millet-1"');
  await expect(put(store, 'batches', batch)).rejects.toThrow('no pack has the id "millet-1"');
  // What was fed stays on record when the animal is gone.
  await put(store, 'lots', lot);
  await put(store, 'batches', batch);
  await remove(store, 'animals', mix.animalIds[0]!);
  await put(store, 'batches', { ...batch, finishedAt: '2026-03-20T11:00:00Z' });
  expect((await store.household()).batches[0]!.animalIds).toEqual(mix.animalIds);
});

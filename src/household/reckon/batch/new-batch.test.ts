import { expect, it } from 'vitest';
import { house, mix } from '../../../../test/kitchen/calendar-house.ts';
import { inScaleSteps, newBatch } from './new-batch.ts';

const about = {
  id: 'b',
  startedAt: '2026-03-14T10:00:00.000Z',
  problem: { ...mix.problem, batch_grams: 250 },
  shares: { millet: 100 },
  order: ['millet'],
};

it('begins with an empty bowl, for the animals that there still are', () => {
  const gone = { ...mix, animalIds: [...mix.animalIds, 'gone'] };
  const batch = newBatch(gone, { ...about, animals: house().animals, stock: { millet: 300 } });
  expect(batch).toMatchObject({ grams: 250, pours: [], animalIds: mix.animalIds, stock: { millet: 300 } });
  expect(newBatch(mix, { ...about, animals: [], stock: {} })).not.toHaveProperty('stock');
  const died = house().animals.map((a) => ({ ...a, gone: { how: 'died', on: '2026-03-13' } as const }));
  expect(newBatch(mix, { ...about, animals: died }).animalIds).toEqual([]);
});

it('is weighed in whole steps of the scale', () => {
  expect(inScaleSteps(299.96, 0.1)).toBe(300);
  expect(inScaleSteps(0.2, 1)).toBe(1);
});

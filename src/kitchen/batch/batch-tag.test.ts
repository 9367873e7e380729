import { expect, it } from 'vitest';
import { batchOf } from '../../../test/kitchen/cupboards.ts';
import type { Batch, Pour } from '../model.ts';
import { batchTag } from './batch-tag.ts';

const pour: Pour = { food: 'millet', lots: [], target: 15, grams: 15, at: '2026-03-20T10:00:00Z' };
const batch = batchOf({
  id: 'batch',
  order: ['millet'],
  pours: [pour],
  stock: { millet: 100, oats: 50 },
  startedAt: '2026-03-20T09:59:00Z',
});

it('is the same for the same batch, however it is written', () => {
  expect(batchTag({ ...batch, stock: { oats: 50, millet: 100 } })).toBe(batchTag(batch));
  expect(batchTag({ ...batch, name: 'Another name' })).toBe(batchTag(batch));
  expect(batchTag(batch)).toMatch(/^[0-9a-f]{16}$/);
});

it('differs by every pour, the end, the step of the scale and the stock', () => {
  const others: Batch[] = [
    batch,
    { ...batch, pours: [] },
    { ...batch, pours: [pour, pour] },
    { ...batch, pours: [{ ...pour, grams: 16 }] },
    { ...batch, pours: [{ ...pour, food: 'Hirse, geschält' }] },
    { ...batch, pours: [{ ...pour, at: '2026-03-20T10:00:01Z' }] },
    { ...batch, finishedAt: '2026-03-20T11:00:00Z' },
    { ...batch, problem: { ...batch.problem, scale_step_grams: 0.5 } },
    { ...batch, stock: { millet: 100 } },
  ];
  expect(new Set(others.map(batchTag)).size).toBe(others.length);
});

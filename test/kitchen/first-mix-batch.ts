/** A batch that has just been begun, and pours for it. */
import type { Batch, Pour } from '../../src/kitchen/model.ts';
import { batchOf } from './cupboards.ts';

/** 300 g of three foods, nothing poured yet. */
export const batch: Batch = batchOf({
  id: 'b',
  mixId: 'm',
  name: 'First mix',
  shares: { oats: 50, maize: 30, dill: 20 },
  order: ['oats', 'maize', 'dill'],
  startedAt: '2026-03-14T10:00:00.000Z',
});

/** Poured as planned; what is taken out again had no target. */
export const pour = (food: string, grams: number): Pour => ({
  food,
  grams,
  lots: [],
  target: Math.max(0, grams),
  at: '2026-03-14T10:05:00.000Z',
});

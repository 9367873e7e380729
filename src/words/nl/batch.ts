import type { Batch } from '../en/batch.ts';
import type { Figures } from '../figures.ts';

export const batch = (_f: Figures): Batch => ({});

import type { Refusals } from '../en/refusals.ts';
import type { Figures } from '../figures.ts';

export const refusals = (_f: Figures): Refusals => ({});

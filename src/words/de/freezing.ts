import type { Freezing } from '../en/freezing.ts';
import type { Figures } from '../figures.ts';

export const freezing = (_f: Figures): Freezing => ({});

import type { Weighing } from '../en/weighing.ts';
import type { Figures } from '../figures.ts';

export const weighing = (_f: Figures): Weighing => ({});

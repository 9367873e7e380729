import type { Drying } from '../en/drying.ts';
import type { Figures } from '../figures.ts';

export const drying = (_f: Figures): Drying => ({});

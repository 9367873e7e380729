import type { Cupboard } from '../en/cupboard.ts';
import type { Figures } from '../figures.ts';

export const cupboard = (_f: Figures): Cupboard => ({});

import type { Mix } from '../en/mix.ts';
import type { Figures } from '../figures.ts';

export const mix = (_f: Figures): Mix => ({});

import type { Targets } from '../en/targets.ts';
import type { Figures } from '../figures.ts';

export const targets = (_f: Figures): Targets => ({});

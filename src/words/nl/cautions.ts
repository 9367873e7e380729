import type { Cautions } from '../en/cautions.ts';
import type { Figures } from '../figures.ts';

export const cautions = (_f: Figures): Cautions => ({});

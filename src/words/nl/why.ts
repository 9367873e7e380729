import type { Why } from '../en/why.ts';
import type { Figures } from '../figures.ts';

export const why = (_f: Figures): Why => ({});

import type { Limits } from '../en/limits.ts';
import type { Figures } from '../figures.ts';

export const limits = (_f: Figures): Limits => ({});

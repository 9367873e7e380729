import type { Verdict } from '../en/verdict.ts';
import type { Figures } from '../figures.ts';

export const verdict = (_f: Figures): Verdict => ({});

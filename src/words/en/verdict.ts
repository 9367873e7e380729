import type { Figures } from '../figures.ts';

export const verdict = (_f: Figures) => ({});

export type Verdict = ReturnType<typeof verdict>;

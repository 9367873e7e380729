import type { Figures } from '../figures.ts';

export const start = (_f: Figures) => ({});

export type Start = ReturnType<typeof start>;

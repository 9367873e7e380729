import type { Figures } from '../figures.ts';

export const refusals = (_f: Figures) => ({});

export type Refusals = ReturnType<typeof refusals>;

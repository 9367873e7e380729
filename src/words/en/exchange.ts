import type { Figures } from '../figures.ts';

export const exchange = (_f: Figures) => ({});

export type Exchange = ReturnType<typeof exchange>;

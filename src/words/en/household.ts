import type { Figures } from '../figures.ts';

export const household = (_f: Figures) => ({});

export type Household = ReturnType<typeof household>;

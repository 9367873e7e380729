import type { Figures } from '../figures.ts';

export const feeding = (_f: Figures) => ({});

export type Feeding = ReturnType<typeof feeding>;

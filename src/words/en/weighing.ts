import type { Figures } from '../figures.ts';

export const weighing = (_f: Figures) => ({});

export type Weighing = ReturnType<typeof weighing>;

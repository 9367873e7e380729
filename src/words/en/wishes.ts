import type { Figures } from '../figures.ts';

export const wishes = (_f: Figures) => ({});

export type Wishes = ReturnType<typeof wishes>;

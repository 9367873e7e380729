import type { Figures } from '../figures.ts';

export const foods = (_f: Figures) => ({});

export type Foods = ReturnType<typeof foods>;

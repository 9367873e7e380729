import type { Figures } from '../figures.ts';

export const calendar = (_f: Figures) => ({});

export type Calendar = ReturnType<typeof calendar>;

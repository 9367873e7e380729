import type { Figures } from '../figures.ts';

export const why = (_f: Figures) => ({});

export type Why = ReturnType<typeof why>;

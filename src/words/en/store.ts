import type { Figures } from '../figures.ts';

export const store = (_f: Figures) => ({});

export type Store = ReturnType<typeof store>;

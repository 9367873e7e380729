import type { Figures } from '../figures.ts';

export const keeping = (_f: Figures) => ({});

export type Keeping = ReturnType<typeof keeping>;

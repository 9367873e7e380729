import type { Figures } from '../figures.ts';

export const freezing = (_f: Figures) => ({});

export type Freezing = ReturnType<typeof freezing>;

import type { Figures } from '../figures.ts';

export const label = (_f: Figures) => ({});

export type Label = ReturnType<typeof label>;

import type { Figures } from '../figures.ts';

export const targets = (_f: Figures) => ({});

export type Targets = ReturnType<typeof targets>;

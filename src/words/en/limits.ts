import type { Figures } from '../figures.ts';

export const limits = (_f: Figures) => ({});

export type Limits = ReturnType<typeof limits>;

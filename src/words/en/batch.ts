import type { Figures } from '../figures.ts';

export const batch = (_f: Figures) => ({});

export type Batch = ReturnType<typeof batch>;

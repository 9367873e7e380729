import type { Figures } from '../figures.ts';

export const versions = (_f: Figures) => ({});

export type Versions = ReturnType<typeof versions>;

import type { Figures } from '../figures.ts';

export const nutrients = (_f: Figures) => ({});

export type Nutrients = ReturnType<typeof nutrients>;

import type { Figures } from '../figures.ts';

export const drying = (_f: Figures) => ({});

export type Drying = ReturnType<typeof drying>;

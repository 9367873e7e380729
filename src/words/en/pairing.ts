import type { Figures } from '../figures.ts';

export const pairing = (_f: Figures) => ({});

export type Pairing = ReturnType<typeof pairing>;

import type { Figures } from '../figures.ts';

export const mix = (_f: Figures) => ({});

export type Mix = ReturnType<typeof mix>;

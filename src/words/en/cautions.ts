import type { Figures } from '../figures.ts';

export const cautions = (_f: Figures) => ({});

export type Cautions = ReturnType<typeof cautions>;

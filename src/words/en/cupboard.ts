import type { Figures } from '../figures.ts';

export const cupboard = (_f: Figures) => ({});

export type Cupboard = ReturnType<typeof cupboard>;

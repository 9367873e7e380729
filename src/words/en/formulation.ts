import type { Figures } from '../figures.ts';

export const formulation = (_f: Figures) => ({});

export type Formulation = ReturnType<typeof formulation>;

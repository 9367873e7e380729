import type { Figures } from '../figures.ts';

export const access = (_f: Figures) => ({});

export type Access = ReturnType<typeof access>;

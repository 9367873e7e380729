import type { Figures } from '../figures.ts';

export const changeOver = (_f: Figures) => ({});

export type ChangeOver = ReturnType<typeof changeOver>;

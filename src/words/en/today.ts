import type { Figures } from '../figures.ts';

export const today = (_f: Figures) => ({});

export type Today = ReturnType<typeof today>;

import type { Figures } from '../figures.ts';

export const shopping = (_f: Figures) => ({});

export type Shopping = ReturnType<typeof shopping>;

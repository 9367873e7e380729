import type { Figures } from '../figures.ts';

export const animals = (_f: Figures) => ({});

export type Animals = ReturnType<typeof animals>;

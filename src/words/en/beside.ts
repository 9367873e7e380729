import type { Figures } from '../figures.ts';

export const beside = (_f: Figures) => ({});

export type Beside = ReturnType<typeof beside>;

import type { Figures } from '../figures.ts';

export const rows = (_f: Figures) => ({});

export type Rows = ReturnType<typeof rows>;

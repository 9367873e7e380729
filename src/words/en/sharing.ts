import type { Figures } from '../figures.ts';

export const sharing = (_f: Figures) => ({});

export type Sharing = ReturnType<typeof sharing>;

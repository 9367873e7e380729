import type { Figures } from '../figures.ts';

export const frame = (_f: Figures) => ({});

export type Frame = ReturnType<typeof frame>;

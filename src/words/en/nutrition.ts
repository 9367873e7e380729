import type { Figures } from '../figures.ts';

export const nutrition = (_f: Figures) => ({});

export type Nutrition = ReturnType<typeof nutrition>;

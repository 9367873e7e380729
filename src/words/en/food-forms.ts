import type { Figures } from '../figures.ts';

export const foodForms = (_f: Figures) => ({});

export type FoodForms = ReturnType<typeof foodForms>;

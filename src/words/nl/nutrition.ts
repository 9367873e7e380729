import type { Nutrition } from '../en/nutrition.ts';
import type { Figures } from '../figures.ts';

export const nutrition = (_f: Figures): Nutrition => ({});

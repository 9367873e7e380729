import type { FoodForms } from '../en/food-forms.ts';
import type { Figures } from '../figures.ts';

export const foodForms = (_f: Figures): FoodForms => ({});

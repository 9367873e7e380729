import type { Foods } from '../en/foods.ts';
import type { Figures } from '../figures.ts';

export const foods = (_f: Figures): Foods => ({});

import type { Nutrients } from '../en/nutrients.ts';
import type { Figures } from '../figures.ts';

export const nutrients = (_f: Figures): Nutrients => ({});

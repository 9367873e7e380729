import type { Animals } from '../en/animals.ts';
import type { Figures } from '../figures.ts';

export const animals = (_f: Figures): Animals => ({});

import type { Formulation } from '../en/formulation.ts';
import type { Figures } from '../figures.ts';

export const formulation = (_f: Figures): Formulation => ({});

import { formulation } from '../formulation.ts';
import { verdict } from '../verdict.ts';

export const solving = { formulation, verdict };

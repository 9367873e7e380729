/** What is said of a mix that is worked out. */
import { formulation } from '../formulation.ts';
import { verdict } from '../verdict.ts';

export const solving = { formulation, verdict };

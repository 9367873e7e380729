import { drying } from '../drying.ts';

export const dried = { drying };

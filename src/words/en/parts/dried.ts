/** What is said of foods that are dried. */
import { drying } from '../drying.ts';

export const dried = { drying };

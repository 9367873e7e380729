/** What is trimmed off fresh foods that are dried at home. */
import { trimming } from '../trimming.ts';

export const home = { trimming };

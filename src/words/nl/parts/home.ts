import { trimming } from '../trimming.ts';

export const home = { trimming };

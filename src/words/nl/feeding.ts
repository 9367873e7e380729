import type { Feeding } from '../en/feeding.ts';
import type { Figures } from '../figures.ts';

export const feeding = (_f: Figures): Feeding => ({});

import type { Start } from '../en/start.ts';
import type { Figures } from '../figures.ts';

export const start = (_f: Figures): Start => ({});

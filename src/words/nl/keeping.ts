import type { Keeping } from '../en/keeping.ts';
import type { Figures } from '../figures.ts';

export const keeping = (_f: Figures): Keeping => ({});

import type { Access } from '../en/access.ts';
import type { Figures } from '../figures.ts';

export const access = (_f: Figures): Access => ({});

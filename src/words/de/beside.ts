import type { Beside } from '../en/beside.ts';
import type { Figures } from '../figures.ts';

export const beside = (_f: Figures): Beside => ({});

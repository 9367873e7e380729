import type { Label } from '../en/label.ts';
import type { Figures } from '../figures.ts';

export const label = (_f: Figures): Label => ({});

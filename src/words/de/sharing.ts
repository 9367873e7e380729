import type { Sharing } from '../en/sharing.ts';
import type { Figures } from '../figures.ts';

export const sharing = (_f: Figures): Sharing => ({});

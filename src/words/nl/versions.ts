import type { Versions } from '../en/versions.ts';
import type { Figures } from '../figures.ts';

export const versions = (_f: Figures): Versions => ({});

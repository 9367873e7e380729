import type { Store } from '../en/store.ts';
import type { Figures } from '../figures.ts';

export const store = (_f: Figures): Store => ({});

/** The card for a sitter. */
import type { Figures } from '../figures.ts';

export const sitter = (_f: Figures) => ({
  title: 'For the sitter',
});

export type Sitter = ReturnType<typeof sitter>;

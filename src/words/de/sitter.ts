import type { Sitter } from '../en/sitter.ts';
import type { Figures } from '../figures.ts';

export const sitter = (_f: Figures): Sitter => ({
  title: 'Für die Betreuung',
});

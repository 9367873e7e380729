/** What must not be fed, is held to a share or prepared first, and what lists of ingredients may name. */
import type { Figures } from '../figures.ts';
import { ADDITIVE_TEXTS } from './additive-texts.ts';
import { CAUTION_TEXTS } from './caution-texts.ts';

export const cautions = (_f: Figures) => ({
  of: CAUTION_TEXTS,
  additives: ADDITIVE_TEXTS,
  /** "Onion family: it breaks up red blood cells." */
  because: (title: string, reason: string) => `${title}: ${reason}`,
});

export type Cautions = ReturnType<typeof cautions>;

import type { Cautions } from '../en/cautions.ts';
import type { Figures } from '../figures.ts';
import { ADDITIVE_TEXTS } from './additive-texts.ts';
import { CAUTION_TEXTS } from './caution-texts.ts';

export const cautions = (_f: Figures): Cautions => ({
  of: CAUTION_TEXTS,
  additives: ADDITIVE_TEXTS,
  because: (title, reason) => `${title}: ${reason}`,
});

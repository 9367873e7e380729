/** A doubt about printed figures, and how figures are told in one. */

import { nutrient, nutrientWord, type Tag, unitWord } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';

export type CheckName = 'sum' | 'part' | 'fibre' | 'energy' | 'bounds' | 'dried' | 'slip';

export interface Warning {
  readonly check: CheckName;
  /** The nutrients it is about. */
  readonly tags: readonly Tag[];
  readonly message: string;
}

/** A figure in words: "12.3 g protein". */
export function told(tag: Tag, amount: number): string {
  return words().label.reading.told(amount, unitWord(nutrient(tag).unit), nutrientWord(tag));
}

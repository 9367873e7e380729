/** The name of a nutrient in a row, with what it means where it is a word of the trade. */
import { nutrient, type Tag } from '../../../nutrition/nutrients.ts';
import type { Words } from '../../../words/words.ts';
import { Term } from './Term.tsx';

const TERMS: Partial<Record<Tag, keyof Words['terms']>> = {
  FIBC: 'fibre',
  FIBTG: 'dietaryFibre',
  ASH: 'ash',
};

/** @param children how it is called here, where that is not its own name */
export function NutrientName({ tag, children }: { tag: Tag; children?: string }) {
  const name = children ?? nutrient(tag).name;
  const term = TERMS[tag];
  return term ? <Term of={term}>{name}</Term> : name;
}

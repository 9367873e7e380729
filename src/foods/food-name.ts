/** What a reference food is called where a keeper reads it. */
import { words } from '../words/words.ts';
import { everydayNames } from './everyday-names.ts';
import type { ReferenceFood } from './reference.ts';

/** The everyday name in the spoken language, where keepers have one; else the name made from the tables. */
export function foodName({ ref, name }: Pick<ReferenceFood, 'ref' | 'name'>): string {
  return everydayNames(ref, words().figures.manner.language)[0] ?? name;
}

/** A food as it is shown and kept: under its {@link foodName}. All else stays as the tables have it. */
export function spokenFood(food: ReferenceFood): ReferenceFood {
  return { ...food, name: foodName(food) };
}

/** The name the table prints, where it says more than the name shown; else empty. */
export function tableNote(food: Pick<ReferenceFood, 'name' | 'tableName'>): string {
  const wordsOf = (text: string) => (text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).sort().join(' ');
  return wordsOf(food.name) === wordsOf(food.tableName) ? '' : food.tableName;
}

import type { ReferenceFood } from '../../foods/reference.ts';

/** The name the table prints, where it says more than the plain name; else empty. */
export function tableNote(food: Pick<ReferenceFood, 'name' | 'tableName'>): string {
  const words = (text: string) => (text.toLowerCase().match(/[a-z0-9]+/g) ?? []).sort().join(' ');
  return words(food.name) === words(food.tableName) ? '' : food.tableName;
}

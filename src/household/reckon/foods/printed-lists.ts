/** What the packs of own foods print goes with them into the problems of mixes, so that what must not be fed stays out. */
import { printedTexts } from '../../../foods/printed-texts.ts';
import type { Override, Problem } from '../../../formulation/problem/problem.ts';
import type { OwnFood } from '../../model.ts';

/** The problem with the printed lists of its own foods, where it was made before they went along; else itself. */
export function withPrintedLists(problem: Problem, foods: readonly OwnFood[]): Problem {
  const lists = new Map(
    foods.flatMap((food) => {
      const texts = printedTexts(food.evidence);
      return texts.length > 0 ? [[food.id, texts] as const] : [];
    }),
  );
  const lacks = (food: Problem['foods'][number] | Problem['beside'][number]) =>
    food.ingredients === undefined && food.composition !== undefined && lists.has(food.id);
  if (![...problem.foods, ...problem.beside].some(lacks)) return problem;
  const told = <F extends Problem['foods'][number] | Problem['beside'][number]>(food: F): F =>
    lacks(food) ? { ...food, ingredients: lists.get(food.id) } : food;
  return { ...problem, foods: problem.foods.map(told), beside: problem.beside.map(told) };
}

/**
 * The keeper's choice to feed a food against some cautions, beside what they chose of it before.
 * @param note why, in their words
 * @param on ISO 8601 date
 */
export function goneAhead(
  before: Override | undefined,
  cautions: readonly string[],
  note: string,
  on: string,
): Override | undefined {
  const ids = [...(before ? [before.caution, ...(before.also ?? [])] : []), ...cautions];
  const [caution, ...also] = new Set(ids);
  if (caution === undefined) return undefined;
  const notes = before && before.note !== note ? `${before.note}\n${note}` : note;
  return { caution, ...(also.length > 0 && { also }), note: notes, on };
}

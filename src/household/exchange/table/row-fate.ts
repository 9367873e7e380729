/** What is wrong with a row, and what becomes of it. */

import type { Figures } from '../../../foods/food.ts';
import { impossible } from '../../../foods/impossible.ts';
import { keyOf } from '../../../foods/label/tokens.ts';
import { gramsPer, nutrient, type Tag } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import type { Asked } from './asked.ts';
import type { KindOfRow } from './row-kinds.ts';

/** What becomes of a row. */
export type Become =
  | { readonly as: 'own' }
  | { readonly as: 'reference'; readonly ref: string }
  /** A food of the keeper's own that is there already. */
  | { readonly as: 'kept'; readonly id: string }
  | { readonly as: 'left-out' };

/** Answers that a keeper gives without being asked: `row N` ("own", "ref:...", "kept:...", "out"), `scale` ("yes"). */
export const ROW_ANSWERS = { own: 'own', out: 'out', ref: 'ref:', kept: 'kept:' } as const;

/** What no food can have, by value or by bound. */
export function faultsOf(figures: Figures): string[] {
  const told = impossible(figures).map(({ message }) => message);
  if (told.length > 0) return told;
  const all = [figures.composition, figures.low ?? {}, figures.high ?? {}].flatMap(
    (part) => Object.entries(part) as [Tag, number][],
  );
  return all.flatMap(([tag, v]) => {
    const { name, unit } = nutrient(tag);
    const most = unit === 'kcal' ? MOST_KCAL : 100 / (gramsPer(unit) ?? 100 / MOST_OTHER);
    return v > most ? [words().ownTable.rowsTold.tooMuch(name, v, unit)] : [];
  });
}

/** More than any food has; a bound may lie above what a value can be. */
const MOST_KCAL = 10_000;
const MOST_OTHER = 1e10;
const MOST_PRICE = 1e8;

/** What is wrong with a row whatever food it becomes. */
export function faultsOfRow(share: number | undefined, price: number | undefined): string[] {
  return [
    ...(share !== undefined && share > 100 ? [words().ownTable.rowsTold.tooBigShare(share)] : []),
    ...(price !== undefined && price > MOST_PRICE ? [words().ownTable.rowsTold.noPrice(price)] : []),
  ];
}

export function becomeOf(
  { row, name }: KindOfRow,
  figures: Figures,
  faults: readonly string[],
  asked: Asked,
  ownNames: ReadonlyMap<string, string>,
  isWrong: boolean,
): Become | undefined {
  const answer = asked.chosen(`row ${row}`);
  if (answer === ROW_ANSWERS.out) return { as: 'left-out' };
  if (isWrong) return undefined;
  if (answer?.startsWith(ROW_ANSWERS.ref) && answer.length > ROW_ANSWERS.ref.length)
    return { as: 'reference', ref: answer.slice(ROW_ANSWERS.ref.length) };
  if (answer?.startsWith(ROW_ANSWERS.kept) && ownNames.has(answer.slice(ROW_ANSWERS.kept.length)))
    return { as: 'kept', id: answer.slice(ROW_ANSWERS.kept.length) };
  if (faults.length > 0) return undefined;
  if (answer === ROW_ANSWERS.own) return { as: 'own' };
  const known = Object.keys({ ...figures.composition, ...figures.low, ...figures.high }).length > 0;
  const there = [...ownNames.values()].some((n) => keyOf(n) === keyOf(name));
  return known && !there ? { as: 'own' } : undefined;
}
